import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { LETTER_FILES, type Letters } from '../packages/papers/src/out.ts';

const { resolve } = createRequire(new URL('../packages/papers/src/out.ts', import.meta.url));
const read = (path: string) => new Uint8Array(readFileSync(resolve(`dejavu-fonts-ttf/${path}`)));

export const LETTERS: Letters = { regular: read(LETTER_FILES.regular), bold: read(LETTER_FILES.bold), mono: read(LETTER_FILES.mono) };
export const MADE = new Date('2026-11-26T08:00:00Z');
