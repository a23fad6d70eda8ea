/** The faces a paper is set in, as TrueType files; every one is embedded. Read them with `papersLetters` of the command line, or fetch them in a browser. */
export interface Letters {
  readonly regular: Uint8Array;
  readonly bold: Uint8Array;
  /** for hashes and keys, which are compared sign by sign */
  readonly mono: Uint8Array;
}

export type Face = keyof Letters;

/** Where the faces lie in the package `dejavu-fonts-ttf` 2.37.3. */
export const LETTER_FILES: Readonly<Record<Face, string>> = {
  regular: 'ttf/DejaVuSansCondensed.ttf',
  bold: 'ttf/DejaVuSansCondensed-Bold.ttf',
  mono: 'ttf/DejaVuSansMono.ttf',
};
