import type { JointPlan } from '@clampwright/core';
import { type BodyOf, type Fold, type JointDraft, type Kept, type KindName, openFold, readUtf8 } from '@clampwright/record';
import type { Device } from '@clampwright/sync';
import { type Watched, watched } from './store.ts';

/** One book as this device knows it: the fold of its entries, the cards and names that go with them. */
export interface Book {
  readonly job: string;
  readonly device: Device;
  readonly fold: Fold;
  /** grows whenever something new is known */
  readonly version: Watched<number>;
  /** Records an entry; on disk when it resolves, and in the fold. */
  readonly record: <K extends KindName>(kind: K, body: BodyOf<K>, by?: string) => Promise<Kept>;
  /** Reads what came from the server since, and the attachments that came with it. */
  readonly refresh: () => Promise<void>;
  readonly joints: () => readonly JointDraft[];
  readonly cardOf: (joint: JointDraft) => JointPlan | undefined;
  readonly nameOf: (person: string) => string | undefined;
  /** hashes of cards and names that entries tell of */
  readonly attachments: () => readonly string[];
}

export async function openBook(device: Device, job: string): Promise<Book> {
  const fold = openFold();
  const version = watched(0);
  const files = new Map<string, Uint8Array>();
  const cards = new Map<string, JointPlan>();
  let read = 0;
  const joints = () => fold.ids('joint').map((id) => fold.state('joint', id));
  const attachments = () => [
    ...joints().flatMap(({ plan }) => (plan ? [plan.slice.card] : [])),
    ...fold.ids('person').flatMap((id) => fold.state('person', id).nameHash ?? []),
  ];
  const refresh = async () => {
    for (const kept of await device.entries(job, read)) fold.add(kept);
    read = (await device.cursor(job)).size;
    for (const hash of attachments()) {
      if (files.has(hash)) continue;
      const bytes = await device.attachment(job, hash);
      if (bytes) files.set(hash, bytes);
    }
    version.set(version.get() + 1);
  };
  await refresh();
  return {
    job,
    device,
    fold,
    version,
    refresh,
    joints,
    attachments,
    record: async (kind, body, by) => {
      const kept = await device.append(job, kind, body, by === undefined ? {} : { by });
      fold.add(kept);
      version.set(version.get() + 1);
      return kept;
    },
    cardOf: ({ plan }) => {
      const hash = plan?.slice.card;
      const bytes = hash === undefined ? undefined : files.get(hash);
      if (hash === undefined || !bytes) return undefined;
      const card = cards.get(hash) ?? (JSON.parse(readUtf8(bytes) ?? 'null') as JointPlan);
      cards.set(hash, card);
      return card;
    },
    nameOf: (person) => {
      const hash = fold.state('person', person).nameHash;
      const bytes = hash && files.get(hash);
      return bytes && readUtf8(bytes);
    },
  };
}
