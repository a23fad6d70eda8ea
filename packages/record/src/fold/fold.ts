import { notice } from '@clampwright/core';
import type { Hash } from '../bytes/hash.ts';
import type { Kept } from '../entry/envelope.ts';
import type { About, Drafts, Subject, Told } from '../entry/kind.ts';
import type { Correction } from '../entry/kinds/correction.ts';
import { understand } from '../entry/understand.ts';
import { openChains } from './chains.ts';
import { type Found, foundIn } from './found.ts';
import { openJudgement } from './judged-by.ts';
import { type Nonconformance, nonconformanceOf } from './nonconformance.ts';
import { placeOf } from './order.ts';
import { openTimelines } from './timelines.ts';

/** What entries add up to. What it hands out is as of now: ask again after `add`. */
export interface Fold {
  /** Takes an entry in any order of arrival; false where it was known. */
  readonly add: (kept: Kept) => boolean;
  readonly size: () => number;
  readonly find: (hash: string) => Kept | undefined;
  /** Was the entry corrected? It stays, struck through. */
  readonly corrections: (hash: string) => readonly Told<Correction>[];
  readonly ids: (subject: Exclude<Subject, 'book'>) => readonly string[];
  readonly state: <S extends Subject>(subject: S, id: string) => Readonly<Drafts[S]>;
  readonly nonconformances: () => readonly Nonconformance[];
}

/**
 * One fold from entries to the state of every bolt, joint, tool, battery and person of a book. Any order of arrival gives the same
 * state; an entry that is known is taken once; a contradiction is kept beside what it contradicts.
 */
export function openFold(): Fold {
  const chains = openChains();
  const corrections = new Map<string, Told<Correction>[]>();
  const unreadable: Kept[] = [];
  const isStruck = (told: { readonly hash: Hash }): boolean => corrections.get(told.hash)?.some((one) => !isStruck(one)) ?? false;
  const judgement = openJudgement(isStruck);
  const timelines = openTimelines({ isStruck, look: judgement.look, judgement: judgement.changes });

  const correct = (told: Told<Correction>) => {
    const { corrects } = told.body;
    const list = corrections.get(corrects) ?? [];
    list.splice(placeOf(list, told), 0, told);
    corrections.set(corrects, list);
    refold(corrects);
  };
  /** Whatever a corrected entry took part in is folded again; where it was itself a correction, what that had struck. */
  const refold = (hash: string): void => {
    const target = chains.find(hash);
    const known = target && understand(target);
    if (!known) return;
    if (known.told.entry.kind === 'correction') {
      refold((known.told.body as Correction).corrects);
      return;
    }
    eachSubject(known.kind.about(known.told.body, known.told.entry), (subject, id) => timelines.invalidate(subject, id));
    if (known.kind.judgedBy) judgement.changed();
  };

  const bookFound = (): Found[] => [
    ...chains.found(),
    ...unreadable.map(({ hash, entry: { kind, version } }) => foundIn(hash, notice('entry-not-readable', { kind, version }))),
    ...[...corrections]
      .filter(([target]) => !chains.find(target))
      .flatMap(([entry, list]) => list.map(({ hash }) => foundIn(hash, notice('corrects-unknown-entry', { entry }))))
      .sort((a, b) => (a.id < b.id ? -1 : 1)),
  ];

  const state = <S extends Subject>(subject: S, id: string): Drafts[S] => {
    const draft = timelines.state(subject, id);
    if (subject !== 'book') return draft;
    const outside = {
      found: bookFound(),
      unreadable: unreadable.map(({ hash, entry: { kind, version } }) => ({ entry: hash, kind, version })),
    };
    return { ...draft, ...outside };
  };

  return {
    find: chains.find,
    size: chains.size,
    corrections: (hash) => corrections.get(hash) ?? [],
    ids: timelines.ids,
    state,
    add(kept) {
      if (!chains.add(kept)) return false;
      const known = understand(kept);
      if (!known) {
        unreadable.splice(placeOf(unreadable, kept), 0, kept);
        return true;
      }
      const { kind, told } = known;
      if (kept.entry.kind === 'correction') {
        correct(told as Told<Correction>);
        return true;
      }
      eachSubject(kind.about(told.body, kept.entry), (subject, id) => {
        timelines.add(subject, id, told);
        if (kind.judgedBy) judgement.add(kept.entry.kind, subject, id, told);
      });
      if (corrections.has(kept.hash)) refold(kept.hash);
      return true;
    },
    nonconformances() {
      const found = [
        ...timelines.ids('joint').flatMap((joint) => timelines.state('joint', joint).found.map((one) => ({ ...one, joint }))),
        ...bookFound(),
      ];
      const ids = new Set(found.map(({ id }) => id));
      return [
        ...found.map((one) => nonconformanceOf(timelines.state('nonconformance', one.id), one)),
        ...timelines
          .ids('nonconformance')
          .filter((id) => !ids.has(id))
          .map((id) => nonconformanceOf(timelines.state('nonconformance', id))),
      ];
    },
  };
}

/** Every subject of an entry, each once. */
function eachSubject(about: About, take: (subject: Subject, id: string) => void): void {
  for (const subject in about) {
    const ids = about[subject as Subject]!;
    ids.forEach((id, at) => {
      if (ids.indexOf(id) === at) take(subject as Subject, id);
    });
  }
}
