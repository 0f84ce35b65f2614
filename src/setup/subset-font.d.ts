declare module 'subset-font' {
  interface SubsetOptions {
    targetFormat?: 'sfnt' | 'woff' | 'woff2';
    preserveNameIds?: number[];
    keepFeatures?: string[];
    keepAllGlyphs?: boolean;
    noHinting?: boolean;
    dropTables?: string[];
  }
  export default function subsetFont(
    font: Uint8Array,
    text: string | undefined,
    options?: SubsetOptions,
  ): Promise<Buffer>;
}
