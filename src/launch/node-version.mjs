/** Whether this Node can build and run the project; must itself run on much older ones. */

/**
 * @param {string} version such as `20.19.0`
 * @returns {string | null} what to tell the user, or null when it is recent enough
 */
export function tooOld(version) {
  const [major = 0, minor = 0] = version.split('.').map(Number);
  const enough = (major === 20 && minor >= 19) || (major === 22 && minor >= 12) || major >= 24;
  if (enough) return null;
  return `Lapwright needs Node 20.19 or newer (22.12 or newer of the 22s); this is Node ${version}.`;
}
