import type { JointPlan, Plan } from '@clampwright/core';
import { aimText, bigText, fastenerText, positionsText, spoken } from '@clampwright/papers/screen';
import { ENGLISH_WORDS, type UnitSystem, type Words } from '@clampwright/words';
import type { Compared, JointChange } from './view.ts';

/** What is otherwise in the second plan, joint by joint, in words; a joint that is the same is not named. */
export function comparePlans(before: Plan, after: Plan, words: Words = ENGLISH_WORDS): readonly JointChange[] {
  const old = new Map(before.joints.map((joint) => [joint.tag, joint]));
  const tags = new Set(after.joints.map(({ tag }) => tag));
  const { units } = after.job;
  const gone = before.joints.flatMap(({ tag, verdict }): JointChange[] =>
    tags.has(tag) ? [] : [{ tag, kind: 'gone', before: verdict, lines: [] }],
  );
  return [
    ...after.joints.flatMap((joint): JointChange[] => {
      const was = old.get(joint.tag);
      if (!was) return [{ tag: joint.tag, kind: 'new', after: joint.verdict, lines: [] }];
      const lines = linesOf(was, joint, units, words);
      return lines.length === 0 ? [] : [{ tag: joint.tag, kind: 'changed', before: was.verdict, after: joint.verdict, lines }];
    }),
    ...gone,
  ];
}

/** What is compared, each as a text: two texts that are alike are the same to a crew. */
const TEXTS: { readonly [C in Compared]: (joint: JointPlan, units: UnitSystem, words: Words) => string } = {
  verdict: ({ verdict }, _, { label }) => label(`verdict-word.${verdict}`),
  rule: ({ rule }, _, { term }) => [term(rule.title), rule.edition].filter(Boolean).join(', '),
  bolts: ({ subgroups }, units, words) => subgroups.map((one) => `${one.positions.length} × ${fastenerText(one, units, words)}`).join('; '),
  preload: ({ subgroups }, units, words) =>
    subgroups.map(({ tightening }) => (tightening ? spoken(units, words).force(tightening.target.value) : '–')).join('; '),
  steps: ({ subgroups }, units, words) =>
    subgroups
      .map(({ tightening }) =>
        (tightening?.steps ?? []).map((step) => `${bigText(step, units, words)} (${aimText(step, units, words)})`).join(' → '),
      )
      .join('; '),
  tool: ({ subgroups }) =>
    [...new Set(subgroups.flatMap(({ tightening }) => tightening?.steps.flatMap(({ setting }) => setting?.tool ?? []) ?? []))].join(', '),
  sequence: ({ sequence, boltCount }) => shortened(sequence.list.map((bolts) => bolts.join('+')).join(' ')) || positionsText([boltCount]),
  rounds: ({ interaction }) => (interaction ? String(interaction.rounds.length) : '–'),
  minutes: ({ work }) => (work ? `${Math.round(work.minutes)} min` : '–'),
};

function linesOf(was: JointPlan, is: JointPlan, units: UnitSystem, words: Words): JointChange['lines'] {
  return (Object.keys(TEXTS) as Compared[]).flatMap((what) => {
    const [before, after] = [TEXTS[what](was, units, words), TEXTS[what](is, units, words)];
    return before === after ? [] : [{ what, before, after }];
  });
}

const LONGEST = 60;
const shortened = (text: string): string => (text.length > LONGEST ? `${text.slice(0, LONGEST)}…` : text);
