/**
 * What is burnt into Electron's program for good: it is this application and nothing else. Every fuse that
 * Electron has is decided about here, in the order in which its program holds them; a test compares the list
 * with that of Electron's own tool.
 */
export const fuses = /** @type {const} */ ({
  /** No one turns the program into a plain Node by an environment variable. */
  runAsNode: false,
  /** Cookies are encrypted, though none are set. */
  enableCookieEncryption: true,
  /** NODE_OPTIONS from outside is not heard. */
  enableNodeOptionsEnvironmentVariable: false,
  /** No debugger through the command line. */
  enableNodeCliInspectArguments: false,
  /** A changed archive does not start (macOS, Windows). */
  enableEmbeddedAsarIntegrityValidation: true,
  /** No folder beside the archive is taken in its place. */
  onlyLoadAppFromAsar: true,
  /** One snapshot for all processes: the program has none of its own. */
  loadBrowserProcessSpecificV8Snapshot: false,
  /** Pages come by our own scheme; files have no rights beyond a browser's. */
  grantFileProtocolExtraPrivileges: false,
  /** As Electron has it: no page of ours runs WebAssembly. */
  wasmTrapHandlers: true,
});

const { wasmTrapHandlers: _unknown, ...known } = fuses;

/** Those that the builder can set by itself; the others are set before it, by `burn-fuses.mjs`. */
export const builderFuses = /** @type {const} */ ({
  ...known,
  /** The signature is made anew after the fuses are set, where there is one (macOS, arm64). */
  resetAdHocDarwinSignature: true,
});
