import type { Hash } from '../bytes/hash.ts';
import type { BatteryDraft, BookDraft, DeviceDraft, LotDraft, NonconformanceDraft, PersonDraft, ToolDraft } from '../fold/draft.ts';
import type { JointDraft } from '../fold/joint-draft.ts';
import type { Look } from '../fold/look.ts';
import type { Envelope } from './envelope.ts';
import type { z } from './field.ts';

/** An entry whose body is understood. */
export interface Told<B = unknown> {
  readonly hash: Hash;
  readonly entry: Envelope;
  readonly body: B;
  /** civil date of the work: on the device's clock, or as the paper says */
  readonly on: string;
}

/** State that entries are folded into, by what it is the state of. */
export interface Drafts {
  readonly joint: JointDraft;
  readonly tool: ToolDraft;
  readonly battery: BatteryDraft;
  readonly person: PersonDraft;
  readonly device: DeviceDraft;
  readonly lot: LotDraft;
  readonly nonconformance: NonconformanceDraft;
  readonly book: BookDraft;
}
export type Subject = keyof Drafts;

/** What an entry is about: ids by subject. */
export type About = { readonly [S in Subject]?: readonly string[] };

/**
 * One kind of entry: what it carries, what it is about, and what it does to the state of each. A kind is a file in ./kinds and its
 * line in ./kinds/index.ts; nothing else knows one kind from another.
 */
export interface EntryKind<B> {
  readonly version: number;
  /** the first version whose bodies this one's reader takes as they are: later ones only added what may be absent */
  readonly since?: number;
  readonly body: z.ZodMiniType<B>;
  readonly about: (body: B, entry: Envelope) => About;
  /** the chain head is signed at once, not only at the next sync */
  readonly signOff?: true;
  /** others are judged by the latest of this kind before them */
  readonly judgedBy?: true;
  readonly fold: { readonly [S in Subject]?: (draft: Drafts[S], told: Told<B>, look: Look) => void };
}

export const defineKind = <B>(kind: EntryKind<B>): EntryKind<B> => kind;

/** The book itself as a subject. */
export const BOOK = ['book'] as const;
