import type { Subject, Told } from '../entry/kind.ts';
import type { KindName } from '../entry/kinds/index.ts';
import type { PersonEnrolled } from '../entry/kinds/person-enrolled.ts';
import type { PlanIssued } from '../entry/kinds/plan-issued.ts';
import type { PlanWithdrawn } from '../entry/kinds/plan-withdrawn.ts';
import type { ToolChecked } from '../entry/kinds/tool-checked.ts';
import type { ToolRegistered } from '../entry/kinds/tool-registered.ts';
import type { Look } from './look.ts';
import { compareEntries, placeOf } from './order.ts';

/** The kinds others are judged by, findable as of any entry. */
export function openJudgement(isStruck: (told: Told) => boolean) {
  // by kind, then subject, then id: no key is put together for a look, which a fold makes several of for every entry
  const lists = new Map<string, Map<Subject, Map<string, Told[]>>>();
  let changes = 0;
  const listOf = (kind: KindName, subject: Subject, id: string) => lists.get(kind)?.get(subject)?.get(id);

  const latest = <B>(kind: KindName, subject: Subject, id: string, before: Told): Told<B> | undefined => {
    const list = listOf(kind, subject, id);
    if (!list) return undefined;
    for (let at = placeOf(list, before) - 1; at >= 0; at -= 1) if (!isStruck(list[at]!)) return list[at] as Told<B>;
    return undefined;
  };
  const later = (a: Told | undefined, b: Told | undefined) => (a && (!b || compareEntries(a, b) > 0) ? a : undefined);

  return {
    changes: () => changes,
    changed: () => {
      changes += 1;
    },
    add(kind: string, subject: Subject, id: string, told: Told): void {
      changes += 1;
      const list = listOf(kind as KindName, subject, id);
      if (list) {
        list.splice(placeOf(list, told), 0, told);
        return;
      }
      const subjects = lists.get(kind) ?? new Map<Subject, Map<string, Told[]>>();
      const ids = subjects.get(subject) ?? new Map<string, Told[]>();
      lists.set(kind, subjects.set(subject, ids.set(id, [told])));
    },
    look: {
      enrolled: (person, at) => latest<PersonEnrolled>('person-enrolled', 'person', person, at),
      revoked: (person, at) =>
        later(latest('person-revoked', 'person', person, at), latest('person-enrolled', 'person', person, at)) !== undefined,
      device: (id, at) => {
        const enrolled = latest('device-enrolled', 'device', id, at);
        if (later(latest('device-revoked', 'device', id, at), enrolled)) return 'revoked';
        // a phone works before the planner's browser has entered it; what it signed counts once that has come
        return enrolled || listOf('device-enrolled', 'device', id)?.some((one) => !isStruck(one)) ? 'enrolled' : 'unknown';
      },
      due: (tool, at) => {
        const registered = latest<ToolRegistered>('tool-registered', 'tool', tool, at);
        const issued = latest<PlanIssued>('plan-issued', 'tool', tool, at);
        return later(registered, issued) ? registered?.body.due : issued?.body.tools.find(({ serial }) => serial === tool)?.due;
      },
      check: (tool, at) => latest<ToolChecked>('tool-checked', 'tool', tool, at),
      withdrawn: (plan, at) => {
        const list = listOf('plan-withdrawn', 'book', 'book') as Told<PlanWithdrawn>[] | undefined;
        return list?.some((one) => one.body.number === plan && compareEntries(one, at) < 0 && !isStruck(one)) ?? false;
      },
    } satisfies Look as Look,
  };
}
