import type { Envelope } from '../entry/envelope.ts';
import { field, z } from '../entry/field.ts';

// The handover file: what writer and verifier share, and nothing else of each other. Described in docs/handover-format.md.

export const HANDOVER_LINE = 'clampwright-handover 1';

export const about = z.strictObject({
  job: field.book,
  title: field.text,
  site: field.text,
  made: field.instant,
  /** entries in the file */
  size: field.count,
});
export type About = Readonly<z.infer<typeof about>>;

export const keys = z.strictObject({
  /** as C2SP signed notes hand keys on */
  log: z.string().check(z.maxLength(400)),
  devices: z.array(z.strictObject({ device: field.device, key: field.key })),
});

/** Attachments that entries name and the file does not hold: erased, or never sent. */
export const missing = z.strictObject({ attachments: z.array(field.hash) });

/** Sections in this order; `heads`, `entries`, `attachment` as often as need be, `report` at most once, the others once. */
export const SECTION_ORDER = ['about', 'keys', 'checkpoint', 'heads', 'entries', 'attachment', 'report', 'missing', 'seal'] as const;

/** Entries come in sections of no more than this, so that a reader needs no more memory. */
export const MOST_SECTION_BYTES = 2 * 1024 * 1024;

/** Hashes of attachments that an entry names, by kind: plan, job and cards, photos, charts, reports, files, names. */
const NAMED: Readonly<Record<string, (body: Readonly<Record<string, unknown>>, version: number) => readonly unknown[]>> = {
  'plan-issued': (body) => [body.plan],
  'job-kept': (body) => [body.job],
  'card-issued': (body) => [(body.slice as { card?: unknown } | undefined)?.card],
  'valve-issued': (body) => [body.card],
  'photo-taken': (body) => [body.photo],
  'person-enrolled': (body) => [body.name],
  'tool-registered': (body) => [body.chart, body.sheet],
  'chart-loaded': (body) => [body.sheet],
  // the first version told of a chart that nobody kept beside it
  'tool-swapped': (body, version) => (version > 1 ? [body.chart] : []),
  'suitability-tested': (body) => [body.report],
  imported: (body) => [body.file],
};

/** The attachments that an entry names. */
export const namedBy = ({ kind, version, body }: Pick<Envelope, 'kind' | 'version' | 'body'>): readonly string[] =>
  (NAMED[kind]?.(body, version) ?? []).filter((hash) => typeof hash === 'string');
