import type { Job, JointPlan, Tool } from '@clampwright/core';
import {
  type BodyOf,
  type Fold,
  type IssuedValve,
  type JointDraft,
  type Kept,
  type KindName,
  openFold,
  readUtf8,
} from '@clampwright/record';
import type { Device } from '@clampwright/sync';
import { type Watched, watched } from './store.ts';

/** Where a book is read from, and written to. */
export type BookSource = Pick<Device, 'entries' | 'cursor' | 'attachment' | 'append'>;

/** One book as this device knows it: the fold of its entries, the cards and names that go with them. */
export interface Book {
  readonly job: string;
  readonly fold: Fold;
  /** grows whenever something new is known */
  readonly version: Watched<number>;
  /** Records an entry; on disk when it resolves, and in the fold. */
  readonly record: <K extends KindName>(kind: K, body: BodyOf<K>, by?: string) => Promise<Kept>;
  /** Reads what came from the server since, and the attachments that came with it. */
  readonly refresh: () => Promise<void>;
  readonly joints: () => readonly JointDraft[];
  readonly cardOf: (joint: JointDraft) => JointPlan | undefined;
  /** by the issue before, where it had another */
  readonly cardBeforeOf: (joint: JointDraft) => JointPlan | undefined;
  readonly valveOf: (joint: JointDraft) => IssuedValve | undefined;
  /** what a plan was made from */
  readonly jobOf: (plan: string | undefined) => Job | undefined;
  /** tools whose charts are loaded in this book, those withdrawn left out */
  readonly loadedTools: () => readonly Tool[];
  readonly nameOf: (person: string) => string | undefined;
  /** entries that came after others which were told an hour or more later: a device that was away, or a clock that is wrong */
  readonly late: () => readonly LateEntry[];
  /** hashes of cards, charts and names that entries tell of */
  readonly attachments: () => readonly string[];
}

interface LateEntry {
  readonly kept: Kept;
  /** how much later the newest was told that came before it */
  readonly minutes: number;
}
/** Told so much later than what came before it, an entry is shown as late. Own choice, no source. */
const LATE_MINUTES = 60;

export async function openBook(device: BookSource, job: string): Promise<Book> {
  const fold = openFold();
  const version = watched(0);
  const files = new Map<string, Uint8Array>();
  const parsed = new Map<string, unknown>();
  const late: LateEntry[] = [];
  let newest = 0;
  let read = 0;
  const joints = () => fold.ids('joint').map((id) => fold.state('joint', id));
  const latestJob = () => fold.state('book', 'book').plans.findLast(({ withdrawn }) => withdrawn === undefined)?.job;
  const attachments = () => [
    ...[...joints().flatMap(({ plan, cardBefore, valve }) => [plan?.slice.card, cardBefore, valve?.card]), latestJob()].filter(
      (hash) => hash !== undefined,
    ),
    ...fold.ids('tool').flatMap((id) => fold.state('tool', id).sheet ?? []),
    ...fold.ids('person').flatMap((id) => fold.state('person', id).nameHash ?? []),
  ];
  const refresh = async () => {
    // asked before the entries: what comes in between is read again, never left out
    const { size } = await device.cursor(job);
    for (const kept of await device.entries(job, read)) {
      if (!fold.add(kept)) continue;
      const at = Date.parse(kept.entry.at);
      const minutes = (newest - at) / 60_000;
      if (minutes >= LATE_MINUTES) late.push({ kept, minutes });
      newest = Math.max(newest, at);
    }
    read = Math.max(read, size);
    for (const hash of attachments()) {
      if (files.has(hash)) continue;
      const bytes = await device.attachment(job, hash);
      if (bytes) files.set(hash, bytes);
    }
    version.set(version.get() + 1);
  };
  await refresh();
  /** what an attachment says, read once */
  const json = <T>(hash: string | undefined): T | undefined => {
    const bytes = hash === undefined ? undefined : files.get(hash);
    if (hash === undefined || !bytes) return undefined;
    if (!parsed.has(hash)) parsed.set(hash, JSON.parse(readUtf8(bytes) ?? 'null'));
    return parsed.get(hash) as T;
  };
  return {
    job,
    fold,
    version,
    refresh,
    joints,
    attachments,
    late: () => late,
    record: async (kind, body, by) => {
      const kept = await device.append(job, kind, body, by === undefined ? {} : { by });
      fold.add(kept);
      version.set(version.get() + 1);
      return kept;
    },
    cardOf: ({ plan }) => json<JointPlan>(plan?.slice.card),
    cardBeforeOf: ({ cardBefore }) => json<JointPlan>(cardBefore),
    valveOf: ({ valve }) => json<IssuedValve>(valve?.card),
    jobOf: (number) => json<Job>(fold.state('book', 'book').plans.findLast((one) => one.number === number)?.job),
    loadedTools: () =>
      fold.ids('tool').flatMap((id) => {
        const { sheet, withdrawn } = fold.state('tool', id);
        const tool = withdrawn ? undefined : json<Tool>(sheet);
        return tool ? [tool] : [];
      }),
    nameOf: (person) => {
      const hash = fold.state('person', person).nameHash;
      const bytes = hash && files.get(hash);
      return bytes && readUtf8(bytes);
    },
  };
}
