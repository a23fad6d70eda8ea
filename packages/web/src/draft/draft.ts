/** The files of a job by name, as the command line reads them from a folder. Bytes are shared between one state and the next. */
export type Files = ReadonlyMap<string, Uint8Array>;

/** A job that is being planned: a job folder under a name. */
export interface Draft {
  readonly id: string;
  readonly name: string;
  /** the invented yard: never mixed with real jobs, never issued */
  readonly demo: boolean;
  /** ISO 8601, UTC */
  readonly changed: string;
  readonly files: Files;
}

/** What the list of drafts shows. */
export type DraftHead = Omit<Draft, 'files'>;

/** The same files with some put in their place; `undefined` takes one away. */
export function withFiles(files: Files, changes: Readonly<Record<string, Uint8Array | undefined>>): Files {
  const next = new Map(files);
  for (const [name, bytes] of Object.entries(changes)) {
    if (bytes === undefined) next.delete(name);
    else next.set(name, bytes);
  }
  return next;
}
