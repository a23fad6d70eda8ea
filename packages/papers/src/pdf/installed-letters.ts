import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { LETTER_FILES, type Letters } from './letters.ts';

let read: Letters | undefined;

/** The faces of printed papers from the installed package, on a machine with files; nothing is fetched. A browser brings its own. */
export function installedLetters(): Letters {
  const { resolve } = createRequire(import.meta.url);
  const bytes = (path: string) => new Uint8Array(readFileSync(resolve(`dejavu-fonts-ttf/${path}`)));
  read ??= { regular: bytes(LETTER_FILES.regular), bold: bytes(LETTER_FILES.bold), mono: bytes(LETTER_FILES.mono) };
  return read;
}
