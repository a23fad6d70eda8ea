import { BOOK_PATTERN, DEVICE_PATTERN } from '@clampwright/record';
import { z } from 'zod/mini';

/** Of a text that is kept beside the log: a name, a signed note. */
const text = z.string().check(z.minLength(1), z.maxLength(4000));
const hash = z.string().check(z.regex(/^[0-9a-f]{64}$/));
const job = z.string().check(z.regex(BOOK_PATTERN));
const size = z.int().check(z.minimum(0));

export const OPEN_EXPORT = 'clampwright-open-export 1';

/** about.json: what is in the export. */
export const about = z.strictObject({
  format: z.literal(OPEN_EXPORT),
  yard: z.optional(z.strictObject({ id: job, name: text })),
  books: z.array(z.strictObject({ job, size, root: hash, attachments: z.array(hash) })),
  /** plans by number, as attachments of the job's book */
  plans: z.array(z.strictObject({ number: text, attachment: hash })),
  /** SHA-256 of every other file */
  files: z.record(z.string().check(z.minLength(1), z.maxLength(400)), hash),
});
export type About = z.infer<typeof about>;

/** BOOK/checkpoints.json: what the log signed, by size. */
export const checkpoints = z.array(z.strictObject({ size, note: text }));

/** devices.json: who wrote. */
export const devices = z.array(
  z.strictObject({ device: z.string().check(z.regex(DEVICE_PATTERN)), name: text, key: hash, enrolled: text }),
);

/** The files of an open export as JSON Schema (draft 2020-12), by their name in docs/schemas. */
export const openExportSchemas = (): Readonly<Record<string, unknown>> => ({
  'open-export-about': {
    $id: 'clampwright-open-export-about-1',
    title: 'about.json of an open export, format 1',
    ...z.toJSONSchema(about),
  },
  'open-export-checkpoints': {
    $id: 'clampwright-open-export-checkpoints-1',
    title: 'checkpoints.json of a book in an open export',
    ...z.toJSONSchema(checkpoints),
  },
  'open-export-devices': { $id: 'clampwright-open-export-devices-1', title: 'devices.json of an open export', ...z.toJSONSchema(devices) },
});
