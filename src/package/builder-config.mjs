/** How the program is packed for Linux, Windows and macOS: the configuration of electron-builder. */
import { afterPack } from './burn-fuses.mjs';
import { builderFuses } from './fuses.mjs';

/** Whoever hands packages on names a page and an address of their own; these lead nowhere. */
const HOMEPAGE = 'https://lapwright.invalid';
const ADDRESS = 'packages@lapwright.invalid';

const projectFile = {
  name: 'Lapwright project',
  description: 'Bonded joints of a tubular frame',
  role: 'Editor',
  mimeType: 'application/x-lapwright+json',
  ext: 'lapwright',
};

/** @param {NodeJS.ProcessEnv} env */
export function configFor(env) {
  /** A certificate is here: in a file, or by its name in the keychain. Empty counts as none. */
  const signed = Boolean(env.CSC_LINK || env.CSC_NAME);
  const address = env.LAPWRIGHT_ADDRESS || ADDRESS;
  return {
    appId: 'app.lapwright.desktop',
    productName: 'Lapwright',
    copyright: 'MIT licence, see LICENSE',
    extraMetadata: {
      homepage: env.LAPWRIGHT_HOMEPAGE || HOMEPAGE,
      author: { name: 'Lapwright', email: address },
      // By this a desktop of Linux tells whose window it is.
      desktopName: 'lapwright.desktop',
    },
    // Everything that runs is bundled: no package travels with it.
    files: ['out/main/**', 'out/preload/**', 'out/renderer/**', 'package.json', '!node_modules/**'],
    // Beside the archive, where people find them; the builder leaves out of the archive what stands here.
    extraResources: [
      { from: 'LICENSE', to: 'LICENSE.txt' },
      { from: 'docs/third-party-notices.md', to: 'third-party-notices.md' },
    ],
    directories: { output: 'out/packages', buildResources: 'src/package' },
    // biome-ignore lint/suspicious/noTemplateCurlyInString: the builder puts its own words in
    artifactName: '${productName}-${version}-${os}-${arch}.${ext}',
    asar: true,
    npmRebuild: false,
    nodeGypRebuild: false,
    publish: null,
    afterPack,
    electronFuses: builderFuses,
    // One suffix of its own: Windows and macOS look at the last one alone.
    fileAssociations: [projectFile],
    linux: {
      target: ['AppImage', 'deb'],
      // The first is one of those that every menu has.
      category: 'Science;Engineering',
      icon: 'src/package/icons',
      executableName: 'lapwright',
      syncDesktopName: true,
      maintainer: `Lapwright <${address}>`,
      synopsis: 'Strength of bonded joints between carbon-fibre tubes and metal sleeves',
      // Here a kind is told by the whole end of a name: older files are ours too.
      fileAssociations: [{ ...projectFile, ext: 'lapwright.json' }],
    },
    // A path, not an address, for the file that is opened.
    deb: { executableArgs: ['%f'] },
    // It always hands an address over; left out, this would switch the sandbox off.
    appImage: { executableArgs: [] },
    win: {
      target: ['nsis'],
      icon: 'src/package/icons/icon.ico',
    },
    nsis: {
      oneClick: false,
      perMachine: false,
      allowToChangeInstallationDirectory: true,
      license: 'LICENSE',
      deleteAppDataOnUninstall: false,
    },
    mac: {
      target: ['dmg'],
      category: 'public.app-category.productivity',
      icon: 'src/package/icons/icon.icns',
      // Without a certificate it is signed for this machine alone (arm64 starts nothing else), and what is
      // signed so has no owner: the hardened runtime would not load its own libraries.
      hardenedRuntime: signed,
      ...(signed ? {} : { identity: '-' }),
      entitlements: 'src/package/entitlements.mac.plist',
      entitlementsInherit: 'src/package/entitlements.mac.plist',
    },
  };
}

export default configFor(process.env);
