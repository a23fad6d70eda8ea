import type { JointPlan, Plan, StepPlan } from '@clampwright/core';
import { hashOf, issuePlan, type Kept, utf8 } from '@clampwright/record';
import { jointId, personId, type TestWriter, testWriter } from '@clampwright/record/test-book';
import type { TestBook } from '@clampwright/record/test-handover';
import { RING, SPLICE, testJob, testPlan } from './test-plan.ts';

const PEOPLE = ['Ailsa Rennick', 'Tobias Quell', 'Maren Hollow'] as const;
const PLANNER = personId(1);
const OPERATOR = personId(2);
const INSPECTOR = personId(3);

/** The joints that are carried out: splice and ring, planned with tools that serve. */
export const toldPlan = (): Plan => testPlan([SPLICE, RING]);

interface Day {
  readonly phone: TestWriter;
  readonly write: TestWriter['write'];
}

/** What a crew tells of one joint, bolt by bolt in the tightening order; `until` leaves the rest open. */
function tighten({ write }: Day, joint: JointPlan, id: string, card: string, until = Number.POSITIVE_INFINITY): Kept[] {
  const names = [...new Set(joint.subgroups.flatMap(({ tightening }) => tightening?.steps.map(({ name }) => name) ?? []))];
  const stepOf = (bolt: number, name: string): StepPlan | undefined =>
    joint.subgroups.find(({ positions }) => positions.includes(bolt))?.tightening?.steps.find((one) => one.name === name);
  return names.flatMap((name, at) =>
    joint.sequence.list
      .flat()
      .slice(0, at === names.length - 1 ? until : undefined)
      .map((bolt) => {
        const step = stepOf(bolt, name)!;
        const used = step.setting ? { tool: step.setting.tool, setting: step.setting.text } : {};
        const angle = step.end.kind === 'mark at angle' ? { angleMilliDegree: 90_000 + ((bolt * 37) % 9) * 1000 } : {};
        return write(
          'bolt-tightened',
          { joint: id, bolt, step: name, card: card as never, end: step.end.kind, ...used, ...angle },
          { by: OPERATOR },
        );
      }),
  );
}

/**
 * A day at the invented yard: splice tightened, one bolt replaced, inspected and signed; the ring begun and left with open bolts, a tool
 * cut out, a nonconformance settled, one left open. With plan, cards and names as attachments.
 */
export function toldBook(plan: Plan = toldPlan()): TestBook {
  const office = testWriter(11);
  const phone = testWriter(12);
  const issue = issuePlan(testJob(), plan, [], {
    number: 'P-7',
    jointId: (tag) => jointId(plan.joints.findIndex((one) => one.tag === tag) + 1),
  });
  const names = PEOPLE.map((name) => utf8(name));
  const opening = [
    ...[office, phone].map(({ device, keys }, i) =>
      office.write('device-enrolled', {
        device,
        key: Buffer.from(keys.publicKey).toString('hex'),
        name: i === 0 ? 'office' : 'phone of the crew',
      }),
    ),
    ...PEOPLE.map((_, i) =>
      office.write(
        'person-enrolled',
        {
          person: personId(i + 1),
          name: hashOf(names[i]!),
          roles: [(['planner', 'crew', 'inspector'] as const)[i]!],
          qualification: 'bolting technician',
          qualifiedUntil: '2027-05-31',
        },
        { by: PLANNER },
      ),
    ),
    office.write('plan-issued', issue.plan, { by: PLANNER }),
    ...issue.cards.map((card) => office.write('card-issued', card, { by: PLANNER })),
    ...issue.plan.tools.map(({ serial }) =>
      office.write('tool-checked', { tool: serial, setting: '2/6', passed: true, readingNewtonMillimetre: 812_000 }, { by: OPERATOR }),
    ),
    office.write(
      'concession-granted',
      { number: 'C-3', joints: [jointId(1)], text: 'Washers of another make at bolts 5 to 8', authority: 'engineer of record' },
      { by: PLANNER },
    ),
  ];
  const heads = [office.head()];
  const day: Day = { phone, write: (kind, body, more) => phone.write(kind, body, { by: OPERATOR, seen: [opening.at(-1)!], ...more }) };
  const told: Kept[] = issue.cards.flatMap(({ slice }, at) => {
    const joint = plan.joints.find(({ tag }) => tag === slice.tag)!;
    const id = slice.joint;
    const first = at === 0;
    const before = [
      ...(slice.datum ? [day.write('datum-confirmed', { joint: id, ...slice.datum })] : []),
      day.write('assembly-checked', { joint: id, washersRight: true, nutMarkingOutward: true, protrusionRight: true, packingRight: true }),
      day.write('snug-checked', { joint: id, passed: true }),
    ];
    const work = tighten(day, joint, id, slice.card, first ? undefined : Math.ceil(joint.boltCount * 0.7));
    const last = joint.subgroups[0]!.tightening!.steps.at(-1)!;
    const after = first
      ? [
          day.write('bolt-trouble', { joint: id, bolt: 3, what: 'bolt spun with nut' }),
          day.write('bolt-replaced', { joint: id, bolts: [3], reason: 'spun with its nut' }),
          ...joint.subgroups[0]!.tightening!.steps.map((step) =>
            day.write('bolt-tightened', {
              joint: id,
              bolt: 3,
              step: step.name,
              end: step.end.kind,
              ...(step.setting ? { tool: step.setting.tool, setting: step.setting.text } : {}),
            }),
          ),
          day.write(
            'inspected',
            { joint: id, bolt: 2, rule: last.name, passed: true, torqueNewtonMillimetre: 797_000, seed: '20261125' },
            { by: INSPECTOR },
          ),
          day.write(
            'nonconformance-raised',
            { nonconformance: 'nc-1', number: 'N-1', joint: id, bolts: [3], text: 'Bolt 3 spun with its nut; assembly replaced.' },
            { by: INSPECTOR },
          ),
          day.write(
            'nonconformance-settled',
            {
              nonconformance: 'nc-1',
              disposition: 'replace',
              authority: 'bolting inspector',
              reason: 'new assembly tightened and looked at',
            },
            { by: INSPECTOR },
          ),
          day.write('nonconformance-reinspected', { nonconformance: 'nc-1', passed: true }, { by: INSPECTOR }),
          day.write('joint-signed', { joint: id, as: 'crew' }),
          day.write('joint-signed', { joint: id, as: 'inspector' }, { by: INSPECTOR }),
        ]
      : [
          day.write('tool-cut-out', { joint: id, tool: 'SK-2', cause: 'pressure lost', bolt: 4 }),
          day.write('nonconformance-raised', {
            nonconformance: 'nc-2',
            number: 'N-2',
            joint: id,
            text: 'Work stopped by wind; bolts left open.',
          }),
          day.write('note-written', { joint: id, text: 'Wind 14 m/s, crane stood down at 15:40.' }),
        ];
    return [...before, ...work, ...after];
  });
  const wrong = told.find(({ entry }) => entry.kind === 'note-written')!;
  const corrected = day.write('correction', { corrects: wrong.hash, reason: '15:20, not 15:40' });
  heads.push(phone.head());
  const unsigned = day.write('note-written', { text: 'Crane stood down at 15:20.' });
  return {
    entries: [...opening, ...told, corrected, unsigned],
    heads,
    keys: [office, phone].map(({ device, keys }) => ({ device, key: keys.publicKey })),
    attachments: new Map([...names, ...issue.attachments].map((bytes) => [hashOf(bytes), bytes])),
  };
}
