import type { TableName } from '../tables/index.ts';
import { DE, DE_UNCLEAR } from './de.ts';
import { EN, EN_UNCLEAR } from './en.ts';

/** The languages a heading may be written in; another one is a file and its lines here. */
export const LANGUAGES = { English: EN, German: DE } as const;
const UNCLEAR = [EN_UNCLEAR, DE_UNCLEAR] as const;

/** A heading on one line; a word parted at the end of a line is put together. */
export const headingLine = (heading: string): string =>
  heading
    .replace(/(?<=\p{L})-\s*\n\s*(?=\p{Ll})/gu, '')
    .replace(/\s+/g, ' ')
    .trim();

/** A heading as it is compared. */
export const plainHeading = (heading: string): string =>
  headingLine(heading)
    .normalize('NFC')
    .toLowerCase()
    .replace(/[._:#]/g, ' ')
    .replace(/(?<=\p{L})-(?=\p{L})/gu, ' ')
    .replace(/\s+/g, ' ')
    .trim();

/** Field by heading, and the fields that an unclear heading may mean. */
export interface Lexicon {
  readonly sure: ReadonlyMap<string, string>;
  readonly unclear: ReadonlyMap<string, readonly string[]>;
}

const made = new Map<TableName, Lexicon>();

/** All that the languages say about one table. A heading that two languages use for different fields is unclear. */
export function lexiconOf(table: TableName): Lexicon {
  const known = made.get(table);
  if (known) return known;
  const sure = new Map<string, string>();
  const unclear = new Map<string, readonly string[]>();
  for (const language of Object.values(LANGUAGES)) {
    for (const [field, headings] of Object.entries(language[table] as Readonly<Record<string, readonly string[]>>)) {
      for (const heading of headings.map(plainHeading)) {
        const other = sure.get(heading);
        if (other === undefined) sure.set(heading, field);
        else if (other !== field) unclear.set(heading, [other, field]);
      }
    }
  }
  for (const language of UNCLEAR) {
    for (const [heading, fields] of Object.entries(language[table])) unclear.set(plainHeading(heading), fields);
  }
  for (const heading of unclear.keys()) sure.delete(heading);
  const lexicon = { sure, unclear };
  made.set(table, lexicon);
  return lexicon;
}
