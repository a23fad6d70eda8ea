import { type JointPlan, mayBeIssued, type NoticeCode, type Plan } from '@clampwright/core';

/** What a plan does otherwise than crews and rule sets are used to: a named person approves it before it is issued. */
type DepartureKind = 'above-target' | 'engineer' | 'own-rounds';
export interface Departure {
  readonly kind: DepartureKind;
  readonly tags: readonly string[];
}

const BY_REASON: Readonly<Partial<Record<NoticeCode, DepartureKind>>> = {
  'above-target-approval': 'above-target',
  'engineer-override': 'engineer',
};

const kindsOf = ({ reasons, interaction }: JointPlan): readonly DepartureKind[] => [
  ...reasons.flatMap(({ code }) => BY_REASON[code] ?? []),
  // rounds of ours in place of custom's
  ...(interaction && ways(interaction.rounds) !== ways(interaction.custom) ? (['own-rounds'] as const) : []),
];

const ways = (rounds: NonNullable<JointPlan['interaction']>['rounds']): string =>
  rounds.map(({ way, settings }) => `${way} ${settings.map(({ text }) => text).join('+')}`).join('; ');

/** Departures of the joints that are issued, each kind once. */
export function departuresOf({ joints }: Plan): readonly Departure[] {
  const found = new Map<DepartureKind, Set<string>>();
  for (const joint of joints.filter(mayBeIssued))
    for (const kind of kindsOf(joint)) found.set(kind, (found.get(kind) ?? new Set<string>()).add(joint.tag));
  return [...found].map(([kind, tags]) => ({ kind, tags: [...tags] }));
}
