import type { Generated } from 'kysely';

// Every key starts with the job (or the yard), so that the tables spread over the nodes of a distributed engine without crossing them.

/** The log itself: written once, never changed, never removed. */
interface EntryTable {
  job: string;
  place: number;
  hash: Buffer;
  device: string;
  sequence: number;
  counter: number;
  arrived: string;
  bytes: Buffer;
}
/** Signed chain heads; written once. */
interface HeadTable {
  job: string;
  device: string;
  sequence: number;
  hash: Buffer;
  bytes: Buffer;
}
/** Root of every whole run of 256 leaves, so that a proof reads few rows; written once. */
interface SubtreeTable {
  job: string;
  run: number;
  hash: Buffer;
}
/** Checkpoints that were handed out; written once. */
interface CheckpointTable {
  job: string;
  size: number;
  note: string;
}
/** Where the log of a book ends: derived from the entries, locked while a batch is appended. */
interface TailTable {
  job: string;
  size: number;
  arrived: string;
  frontier: Buffer;
}
interface AttachmentTable {
  job: string;
  hash: Buffer;
  upload: string;
  size: number;
}
interface AttachmentPartTable {
  job: string;
  hash: Buffer;
  upload: string;
  part: number;
  bytes: Buffer;
}
/** Accounts, sessions, devices and codes: what may change and be taken back. */
interface AccessTable {
  job: string;
  kind: string;
  id: string;
  value: string;
  written: Generated<string>;
}

export interface Tables {
  entry: EntryTable;
  head: HeadTable;
  subtree: SubtreeTable;
  checkpoint: CheckpointTable;
  tail: TailTable;
  attachment: AttachmentTable;
  attachment_part: AttachmentPartTable;
  access: AccessTable;
}
