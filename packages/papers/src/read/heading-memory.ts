import { type Notice, notice } from '@clampwright/core';
import { stringify } from 'yaml';
import { z } from 'zod';
import { lexiconOf, plainHeading } from './headings/index.ts';
import { load, type OpenFile } from './open-file.ts';
import { fieldsOf, TABLES, type TableName } from './tables/index.ts';
import { readYaml } from './yaml-file.ts';
import { word } from './yaml-values.ts';

/** The file of a job folder in which confirmed headings stand. */
export const MAPPING_FILE = 'mapping.yaml';
/** Where a heading means nothing that is wanted. */
const NOTHING = 'ignore';

/** What a person says a heading means: a field by its name, `ignore`, or a field with its unit: `length [mm]`. */
export interface HeadingMeans {
  readonly heading: string;
  readonly means: string;
}

const fileSchema = z.strictObject({
  tables: z
    .array(
      z.strictObject({
        table: z.enum(Object.keys(TABLES) as [TableName, ...TableName[]]),
        headings: z.array(z.string()),
        means: z.record(z.string(), word),
      }),
    )
    .default([]),
});
type Confirmed = z.output<typeof fileSchema>['tables'][number];

/** A field, and the unit it was said to be in; `undefined` as field: not wanted. */
interface Told {
  readonly field: string | undefined;
  readonly unit?: string;
}

/** Which heading means what, as people confirmed it: once, for all tables with the same headings. */
export interface HeadingMemory {
  /** what was said of a table with these headings, by plain heading */
  readonly recall: (table: TableName, headings: readonly string[]) => ReadonlyMap<string, Told>;
  readonly notices: () => readonly Notice[];
  /** the text of the mapping file, where something new was said and found */
  readonly text: () => string | undefined;
}

const signature = (headings: readonly string[]): string[] => [...new Set(headings.map(plainHeading).filter(Boolean))].sort();
const same = (a: readonly string[], b: readonly string[]) => a.length === b.length && a.every((one, at) => one === b[at]);

/** What the folder remembers, and what is said now. What is said now comes first. */
export function headingMemory(open: OpenFile, now: readonly HeadingMeans[] = []): HeadingMemory {
  const notices: Notice[] = [];
  const kept = rememberedIn(open, notices);
  const used = new Set<HeadingMeans>();
  const fresh: Confirmed[] = [];
  return {
    recall: (table, headings) => {
      const seen = signature(headings);
      const told = new Map<string, Told>();
      for (const one of kept) {
        if (one.table === table && same(signature(one.headings), seen))
          for (const [heading, means] of Object.entries(one.means))
            told.set(plainHeading(heading), toldBy(table, means) ?? { field: undefined });
      }
      const said = now.filter(({ heading }) => seen.includes(plainHeading(heading)));
      for (const one of said) {
        const means = toldBy(table, one.means);
        if (!means) continue;
        used.add(one);
        told.set(plainHeading(one.heading), means);
      }
      const confirmed = said.filter((one) => used.has(one) && toldBy(table, one.means));
      if (confirmed.length > 0 && !fresh.some((one) => one.table === table && same(one.headings, seen)))
        fresh.push({ table, headings: seen, means: Object.fromEntries(confirmed.map(({ heading, means }) => [heading, means])) });
      return told;
    },
    notices: () => [
      ...notices,
      ...now.filter((one) => !used.has(one)).map(({ heading, means }) => notice('heading-map-unused', { heading, means })),
    ],
    text: () => (fresh.length === 0 ? undefined : mappingText(merged(kept, fresh))),
  };
}

/** A field by its key, by the name that messages use, or by any of its headings. */
function toldBy(table: TableName, means: string): Told | undefined {
  const parts = /^(.*?)\s*\[([^\]]*)\]$/.exec(means);
  const name = parts?.[1] ?? means;
  const unit = parts?.[2];
  const wanted = plainHeading(name);
  if (wanted === NOTHING) return { field: undefined };
  const fields = Object.entries(fieldsOf(table));
  const field = fields.find(([key, { says }]) => key === name || plainHeading(says) === wanted)?.[0] ?? lexiconOf(table).sure.get(wanted);
  return field === undefined ? undefined : unit === undefined ? { field } : { field, unit };
}

function rememberedIn(open: OpenFile, notices: Notice[]): readonly Confirmed[] {
  if (open(MAPPING_FILE) === 'missing') return [];
  const bytes = load(open, MAPPING_FILE);
  const read = bytes.ok ? readYaml(bytes.value, MAPPING_FILE, fileSchema) : bytes;
  notices.push(...(read.ok ? read.value.notices : read.notices));
  return read.ok ? read.value.value.tables : [];
}

/** Several mapping files as one, the last of them first to be believed; `undefined` where none says anything. */
export function joinedMappings(files: readonly Uint8Array[]): string | undefined {
  const tables = files.flatMap((bytes) => rememberedIn(() => bytes, []));
  return tables.length === 0 ? undefined : mappingText(tables);
}

function merged(kept: readonly Confirmed[], fresh: readonly Confirmed[]): readonly Confirmed[] {
  const old = kept.map((one) => {
    const more = fresh.find(({ table, headings }) => table === one.table && same(headings, signature(one.headings)));
    return more ? { ...one, means: { ...one.means, ...more.means } } : one;
  });
  const added = fresh.filter((one) => !kept.some(({ table, headings }) => table === one.table && same(signature(headings), one.headings)));
  return [...old, ...added];
}

const mappingText = (tables: readonly Confirmed[]): string =>
  `# clampwright-mapping 1: what headings of tables mean, as it was confirmed. Every table with the same headings is read alike.\n${stringify({ tables })}`;
