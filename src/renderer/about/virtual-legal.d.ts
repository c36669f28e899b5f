/** Made of the licence and the notices when the program is built: `src/documents/legal-plugin.ts`. */
declare module 'virtual:legal/*' {
  export interface LegalText {
    readonly title: string;
    readonly before: string;
    readonly parts: readonly { readonly heading: string; readonly text: string }[];
  }
  export const legal: LegalText;
}
