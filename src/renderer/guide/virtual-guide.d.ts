/** Made of the documents when the program is built: `src/documents`. */
declare module 'virtual:guide' {
  export interface GuideSection {
    readonly anchor: string;
    readonly heading: string;
    readonly level: number;
    readonly text: string;
  }
  export interface GuideText {
    readonly html: string;
    readonly sections: readonly GuideSection[];
  }
  export interface GuidePage {
    readonly id: string;
    readonly title: string;
    readonly headings: readonly { readonly anchor: string; readonly heading: string }[];
    load(): Promise<GuideText>;
  }
  export const pages: readonly GuidePage[];
}
