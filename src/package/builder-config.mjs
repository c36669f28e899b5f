/** How the program is packed for Linux, Windows and macOS: the configuration of electron-builder. */
import { fuses } from './fuses.mjs';

/** The kind of file that belongs to the program: its own short suffix, and the long one where a system can tell it. */
const projectFile = {
  name: 'Lapwright project',
  description: 'Bonded joints of a tubular frame',
  role: 'Editor',
  mimeType: 'application/x-lapwright+json',
};
/** Windows and macOS look at the last suffix alone, and `json` belongs to many. */
const byLastSuffix = [{ ...projectFile, ext: 'lapwright' }];

export const builderConfig = {
  appId: 'app.lapwright.desktop',
  productName: 'Lapwright',
  copyright: 'MIT licence, see LICENSE',
  // Everything that runs is bundled: no package travels with it.
  files: ['out/main/**', 'out/preload/**', 'out/renderer/**', 'package.json', '!node_modules/**'],
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
  electronFuses: fuses,
  linux: {
    target: ['AppImage', 'deb'],
    category: 'Engineering',
    icon: 'src/package/icons',
    maintainer: 'Lapwright',
    synopsis: 'Strength of bonded joints between carbon-fibre tubes and metal sleeves',
    // A MIME type is told by the whole end of a name, so that both suffixes can be ours.
    fileAssociations: [...byLastSuffix, { ...projectFile, ext: 'lapwright.json' }],
  },
  win: {
    target: ['nsis'],
    icon: 'src/package/icons/icon.ico',
    fileAssociations: byLastSuffix,
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
    hardenedRuntime: true,
    fileAssociations: byLastSuffix,
  },
};

export default builderConfig;
