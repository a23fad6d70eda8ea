import {
  type BoltUnderRule,
  findGrade,
  findRuleSet,
  findThread,
  type RuleSetId,
  strengthAt,
  type Tightening,
} from '../packages/core/src/index.ts';

type Known = Partial<Omit<BoltUnderRule, 'thread' | 'grade' | 'strength'>>;

/** A bolt as a rule set is asked about it. */
export function bolt(size: string, gradeName: string, known: Known = {}): BoltUnderRule {
  const [thread, grade] = [findThread(size), findGrade(gradeName)];
  if (!thread.ok || !grade.ok) throw new Error(`no such bolt: ${size} ${gradeName}`);
  const strength = strengthAt(grade.value, thread.value.diameter);
  if (!strength.ok) throw new Error(`${gradeName} is not made in ${size}`);
  return {
    thread: thread.value,
    grade: grade.value,
    strength: strength.value,
    edition: '',
    system: 'plain',
    tested: false,
    slopedFaces: 0,
    retightened: false,
    turned: 'nut',
    given: {},
    ...known,
  };
}

const ask = (id: RuleSetId, one: BoltUnderRule) => {
  const found = findRuleSet(id, one.edition === '' ? undefined : one.edition);
  if (!found.ok) throw new Error(`no rule set ${id} ${one.edition}`);
  return found.value.rule.tighten({ ...one, edition: found.value.edition });
};

/** What the rule set asks of the bolt; it must have an answer. */
export function tightening(id: RuleSetId, one: BoltUnderRule): Tightening {
  const asked = ask(id, one);
  if (!asked.ok) throw new Error(asked.notices.map(({ code }) => code).join(', '));
  return asked.value;
}

/** Codes of its refusal; empty where it has an answer. */
export function refusals(id: RuleSetId, one: BoltUnderRule): string[] {
  const asked = ask(id, one);
  return asked.ok ? [] : asked.notices.map(({ code }) => code);
}
