import type { Subject, Told } from '../entry/kind.ts';
import type { KindName } from '../entry/kinds/index.ts';
import type { PersonEnrolled } from '../entry/kinds/person-enrolled.ts';
import type { PlanIssued } from '../entry/kinds/plan-issued.ts';
import type { ToolChecked } from '../entry/kinds/tool-checked.ts';
import type { ToolRegistered } from '../entry/kinds/tool-registered.ts';
import type { Look } from './look.ts';
import { compareEntries, placeOf } from './order.ts';

/** The kinds others are judged by, findable as of any entry. */
export function openJudgement(isStruck: (told: Told) => boolean) {
  const lists = new Map<string, Told[]>();
  let changes = 0;

  const latest = <B>(kind: KindName, subject: Subject, id: string, before: Told): Told<B> | undefined => {
    const list = lists.get(`${kind} ${subject} ${id}`);
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
      const key = `${kind} ${subject} ${id}`;
      const list = lists.get(key);
      if (list) list.splice(placeOf(list, told), 0, told);
      else lists.set(key, [told]);
    },
    lookAt: (told: Told): Look => ({
      person: (id) => {
        const enrolled = latest<PersonEnrolled>('person-enrolled', 'person', id, told);
        const revoked = later(latest('person-revoked', 'person', id, told), enrolled) !== undefined;
        return enrolled ? { enrolled, revoked } : { revoked };
      },
      device: (id) => {
        const enrolled = latest('device-enrolled', 'device', id, told);
        return { enrolled: enrolled !== undefined, revoked: later(latest('device-revoked', 'device', id, told), enrolled) !== undefined };
      },
      tool: (serial) => {
        const registered = latest<ToolRegistered>('tool-registered', 'tool', serial, told);
        const issued = latest<PlanIssued>('plan-issued', 'tool', serial, told);
        const due = later(registered, issued) ? registered?.body.due : issued?.body.tools.find((one) => one.serial === serial)?.due;
        const check = latest<ToolChecked>('tool-checked', 'tool', serial, told);
        return { known: due !== undefined, ...(due === undefined ? {} : { due }), ...(check ? { check } : {}) };
      },
    }),
  };
}
