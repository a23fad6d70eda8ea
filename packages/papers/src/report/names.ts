import type { JointPlan, Plan } from '@clampwright/core';
import type { UnitSystem, Words } from '@clampwright/words';
import type { ReportSource } from './source.ts';

/** What ids are called on paper. */
export interface Names {
  readonly person: (id: string | undefined) => string;
  readonly joint: (id: string) => string;
  readonly device: (id: string) => string;
  readonly lot: (id: string) => string;
  /** the issued card of a joint, where the log still holds it */
  readonly card: (id: string) => JointPlan | undefined;
  readonly units: UnitSystem;
  /** number of a tool's certificate, as registered or as the plan had it */
  readonly certificate: (serial: string) => string | undefined;
}

const MOST_LETTERS = 80;
/** Enough of an id to tell two apart on one page. */
export const short = (id: string): string => (id.length > 14 ? `${id.slice(0, 10)}…` : id);

/** Looks all names up once: they lie beside the log, and may have been erased. */
export async function readNames({ fold, attachment }: ReportSource, { label }: Words): Promise<Names> {
  const people = new Map<string, string>();
  for (const id of fold.ids('person')) {
    const { nameHash } = fold.state('person', id);
    const bytes = nameHash === undefined ? undefined : await attachment(nameHash);
    if (bytes) people.set(id, nameOf(bytes));
  }
  const cards = new Map<string, JointPlan>();
  for (const id of fold.ids('joint')) {
    const { plan } = fold.state('joint', id);
    const card = plan && (await jsonOf<JointPlan>(attachment, plan.slice.card, isCard));
    if (card) cards.set(id, card);
  }
  const plans = fold.state('book', 'book').plans.map(({ hash }) => hash);
  const issued: Plan[] = [];
  for (const hash of new Set(plans)) issued.push(...((one) => (one ? [one] : []))(await jsonOf<Plan>(attachment, hash, isPlan)));
  return {
    units: issued.at(-1)?.job.units ?? 'metric',
    certificate: (serial) =>
      fold.state('tool', serial).certificate ?? issued.flatMap(({ tools }) => tools).findLast((one) => one.serial === serial)?.certificate,
    person: (id) => (id === undefined ? label('report.unnamed') : (people.get(id) ?? short(id))),
    joint: (id) => fold.state('joint', id).tag ?? short(id),
    device: (id) => fold.state('device', id).name ?? short(id),
    lot: (id) => fold.state('lot', id).name ?? short(id),
    card: (id) => cards.get(id),
  };
}

/** The first line of what lies under a name's hash. */
const nameOf = (bytes: Uint8Array): string => new TextDecoder().decode(bytes).split('\n')[0]!.slice(0, MOST_LETTERS);

/** Plan and cards are kept as JSON; what is not one is left alone. */
async function jsonOf<T>(attachment: ReportSource['attachment'], hash: string, is: (value: T) => boolean): Promise<T | undefined> {
  const bytes = await attachment(hash);
  if (!bytes) return undefined;
  try {
    const value = JSON.parse(new TextDecoder().decode(bytes)) as T;
    return is(value) ? value : undefined;
  } catch {
    return undefined;
  }
}

const isCard = (card: JointPlan) => Array.isArray(card.subgroups) && (card.layout?.kind === 'ring' || card.layout?.kind === 'group');
const isPlan = (plan: Plan) => plan.format === 'clampwright-plan' && Array.isArray(plan.tools);

/** An instant as it stands in tables: `2026-11-25 08:14`. */
export const minuteOf = (instant: string): string => `${instant.slice(0, 10)} ${instant.slice(11, 16)}`;

/** By whom and when something was told. */
export const told = (names: Names, mention: { readonly by?: string; readonly at: string }) => ({
  by: names.person(mention.by),
  at: minuteOf(mention.at),
});
