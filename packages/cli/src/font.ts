import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

const FILE = '@fontsource-variable/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-wght-normal.woff2';

/** The letters of pages and cards; the file ships with the checkout, nothing is fetched. */
export const font = (): Uint8Array => readFileSync(createRequire(import.meta.url).resolve(FILE));
