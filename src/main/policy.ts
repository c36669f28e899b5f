/**
 * What the page may do, said once for both carriers: load its own files, ask its own host, and
 * nothing else. No inline script or style, no eval, no frame, no form, no other address.
 */
const directives = {
  'default-src': "'none'",
  'script-src': "'self'",
  'style-src': "'self'",
  'font-src': "'self'",
  'img-src': "'self' data:",
  'connect-src': "'self'",
  'base-uri': "'none'",
  'form-action': "'none'",
  'frame-ancestors': "'none'",
} as const;

export const CONTENT_SECURITY_POLICY = Object.entries(directives)
  .map(([name, sources]) => `${name} ${sources}`)
  .join('; ');

/** Goes with every response, page and answer alike. */
export const POLICY_HEADERS = {
  'content-security-policy': CONTENT_SECURITY_POLICY,
  'cache-control': 'no-store',
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
} as const;
