import { type JointPlan, type Level, levelOf, type Notice } from '@clampwright/core';
import { ENGLISH_WORDS, type UnitSystem, type Words } from '@clampwright/words';

/** One thing to mend, with every way it was met and all joints it would help. */
export interface ToMend {
  readonly level: Level;
  readonly remedy: string;
  readonly says: readonly string[];
  readonly tags: readonly string[];
}

const RANK: Readonly<Record<Level, number>> = { stop: 0, fault: 0, hold: 1, attention: 2 };

/** Reasons of many joints by their remedy: stops before holds before attention, then what helps most joints. */
export function groupRemedies(
  joints: readonly Pick<JointPlan, 'tag' | 'reasons'>[],
  ofJob: readonly Notice[],
  units: UnitSystem,
  words: Words = ENGLISH_WORDS,
): ToMend[] {
  const found = new Map<string, { level: Level; remedy: string; says: Set<string>; tags: Set<string> }>();
  const add = (reason: Notice, tag?: string) => {
    const level = levelOf(reason.code);
    const text = words.remedy(reason, units);
    const key = `${level}/${text}`;
    const entry = found.get(key) ?? { level, remedy: text, says: new Set<string>(), tags: new Set<string>() };
    entry.says.add(words.says(reason, units));
    if (tag !== undefined) entry.tags.add(tag);
    found.set(key, entry);
  };
  for (const reason of ofJob) add(reason);
  for (const { tag, reasons } of joints) for (const reason of reasons) add(reason, tag);
  return [...found.values()]
    .map((one) => ({ ...one, says: [...one.says], tags: [...one.tags] }))
    .sort((a, b) => RANK[a.level] - RANK[b.level] || b.tags.length - a.tags.length);
}
