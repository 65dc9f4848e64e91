/** The little of papaparse that tests and benches use; its own types would bring the DOM's along. */
declare module 'papaparse' {
  interface ParseOptions {
    readonly delimiter?: string;
    readonly newline?: string;
    readonly skipEmptyLines?: boolean;
  }
  const Papa: {
    /** Rows of strings: no header row, no typing. */
    parse(text: string, options?: ParseOptions): { readonly data: string[][] };
  };
  export default Papa;
}
