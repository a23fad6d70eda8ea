import type { Notice } from '@clampwright/core';
import type { Book } from './book.ts';
import { drawnBolts, recordedSeed } from './drawn-sample.ts';
import { type JointState, jointState, type Stopped } from './joint-state.ts';
import { toLookAt } from './to-look-at.ts';

/** One thing that a joint lacks before it can be handed over. */
export type Missing =
  | { readonly what: 'card' | 'datum' | 'assembly' | 'crew signature' | 'inspector signature' }
  | { readonly what: 'stopped'; readonly stopped: Stopped }
  | { readonly what: 'hold'; readonly notice: Notice }
  | { readonly what: 'bolts'; readonly step: string; readonly bolts: readonly number[] }
  | { readonly what: 'loosened'; readonly bolts: readonly number[] }
  | { readonly what: 'inspection'; readonly done: number; readonly wanted: number }
  | { readonly what: 'nonconformance'; readonly count: number };

export interface JointMissing {
  readonly joint: string;
  readonly tag: string;
  readonly missing: readonly Missing[];
}

/** What each issued joint of a book still lacks; an empty list: it is complete. */
export function missingByJoint(book: Book): JointMissing[] {
  const open = new Map<string | undefined, number>();
  for (const { joint, state } of book.fold.nonconformances()) if (state !== 'settled') open.set(joint, (open.get(joint) ?? 0) + 1);
  return book.fold
    .ids('joint')
    .map((id) => jointState(book, id))
    .filter(isOfTheJob)
    .map((state) => ({
      joint: state.joint.joint,
      tag: state.joint.tag ?? state.joint.joint,
      missing: missingOf(book, state, open.get(state.joint.joint) ?? 0),
    }))
    .sort((a, b) => a.tag.localeCompare(b.tag, undefined, { numeric: true }));
}

/** What a later plan no longer has, and nobody began, is not. */
const isOfTheJob = ({ joint, stopped }: JointState): boolean =>
  joint.plan !== undefined && !(stopped?.why === 'gone' && joint.bolts.size === 0);

function missingOf(book: Book, { joint, card, steps, holds, stopped }: JointState, open: number): Missing[] {
  const unsettled = open > 0 ? [{ what: 'nonconformance' as const, count: open }] : [];
  if (stopped) return [{ what: 'stopped', stopped }, ...unsettled];
  if (!card) return [{ what: 'card' }];
  const signed = (as: string) => joint.signatures.some((one) => one.as === as);
  const loosened = [...joint.bolts.values()].filter((bolt) => bolt.loosened).map(({ position }) => position);
  // who drew is not known before the first look; how many is
  const sample = drawnBolts(card, recordedSeed(book, joint) ?? 0).bolts;
  const wanted = [...sample, ...toLookAt(joint, card, sample).extended];
  const looked = [...joint.bolts.values()].filter(({ inspections }) => inspections.length > 0).length;
  return [
    ...holds.map((notice) => ({ what: 'hold' as const, notice })),
    ...(joint.datum?.agrees ? [] : [{ what: 'datum' as const }]),
    ...(joint.assembly?.passed ? [] : [{ what: 'assembly' as const }]),
    ...steps
      .filter(({ left }) => left > 0)
      .map(({ step, open: lines }) => ({ what: 'bolts' as const, step, bolts: lines.flat().sort((a, b) => a - b) })),
    ...(loosened.length > 0 ? [{ what: 'loosened' as const, bolts: loosened }] : []),
    ...(looked < wanted.length ? [{ what: 'inspection' as const, done: looked, wanted: wanted.length }] : []),
    ...unsettled,
    ...(signed('crew') ? [] : [{ what: 'crew signature' as const }]),
    ...(wanted.length > 0 && !signed('inspector') ? [{ what: 'inspector signature' as const }] : []),
  ];
}
