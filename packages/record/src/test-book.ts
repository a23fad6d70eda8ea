import { type Hash, hashOf } from './bytes/hash.ts';
import { deviceIdOf, idOf } from './bytes/id.ts';
import { type KeyPair, keyPairOf } from './bytes/keys.ts';
import { utf8 } from './bytes/text.ts';
import { type SignedHead, signHead } from './chain/head.ts';
import type { Kept } from './entry/envelope.ts';
import type { BodyOf, KindName } from './entry/kinds/index.ts';
import { writeEntry } from './entry/write.ts';
import type { Fold } from './fold/fold.ts';
import type { Slice } from './fold/slice.ts';

// An invented book of the yard Skerrow Sound, for tests, benches and the torture run: the same for the same numbers.

const sixteen = (n: number) => Uint8Array.from({ length: 16 }, (_, i) => (n >>> (8 * (i % 4))) & 255);

export const TEST_JOB = idOf('job', sixteen(1));
export const jointId = (n: number): string => idOf('joint', sixteen(n));
export const personId = (n: number): string => idOf('person', sixteen(n));
export const testKeys = (n: number): KeyPair => keyPairOf(Uint8Array.from({ length: 32 }, (_, i) => (n * 31 + i * 7 + (n >>> 8)) & 255));

export interface TestWriter {
  readonly device: string;
  readonly keys: KeyPair;
  readonly write: <K extends KindName>(kind: K, body: BodyOf<K>, more?: { by?: string; seen?: readonly Kept[]; day?: string }) => Kept;
  /** a device that was copied in this very state */
  readonly clone: () => TestWriter;
  readonly head: () => SignedHead;
}

/** A device that writes entries into a book, one after the other. */
export function testWriter(n: number, job = TEST_JOB, from?: { sequence: number; previous?: Hash; counter: number }): TestWriter {
  const keys = testKeys(n);
  const device = deviceIdOf(keys.publicKey);
  let { sequence, previous, counter } = { sequence: 0, previous: undefined as Hash | undefined, counter: 0, ...from };
  return {
    device,
    keys,
    clone: () => testWriter(n, job, { sequence, counter, ...(previous === undefined ? {} : { previous }) }),
    head: () => signHead({ job, device, sequence: sequence - 1, hash: previous! }, keys),
    write(kind, body, { by, seen = [], day = '2026-11-25' } = {}) {
      counter = Math.max(counter, ...seen.map(({ entry }) => entry.counter)) + 1;
      const minute = String(Math.floor(sequence / 60) % 24).padStart(2, '0');
      const kept = writeEntry(
        {
          job,
          device,
          sequence,
          counter,
          at: `${day}T${minute}:${String(sequence % 60).padStart(2, '0')}:00.000Z`,
          offsetMinutes: 0,
          ...(previous === undefined ? {} : { previous }),
          ...(by === undefined ? {} : { by }),
          ...(seen.length === 0 ? {} : { seen: seen.map(({ hash }) => hash) }),
        },
        kind,
        body,
      );
      sequence += 1;
      previous = kept.hash;
      return kept;
    },
  };
}

export const TEST_STEPS = ['first step', 'second step'] as const;
const upTo = (count: number) => Array.from({ length: count }, (_, i) => i + 1);

/** What a joint of so many bolts is judged by: two steps, bolts one after the other, one tool. */
export const testSlice = (n: number, bolts: number): Slice => ({
  joint: jointId(n),
  tag: `TB-R${n}`,
  card: hashOf(utf8(`card ${n}`)),
  bolts,
  sequence: upTo(bolts).map((bolt) => [bolt]),
  toolsAtOnce: 1,
  datum: { boltOne: 'weld seam at the door', direction: 'clockwise', viewedFrom: 'inside' },
  steps: TEST_STEPS.map((step, i) => ({
    step,
    ordered: true,
    repeats: false,
    settings: [{ tool: 'SK-1', setting: `2/${i + 3}`, positions: upTo(bolts) }],
  })),
});

/** What stands before the first bolt: people, devices, the plan, and the tool checked that day. */
export function openingEntries(planner: TestWriter, crew: readonly TestWriter[], joints: readonly Slice[]): Kept[] {
  const by = personId(1);
  return [
    planner.write('device-enrolled', { device: planner.device, key: hex(planner.keys.publicKey), name: 'office' }),
    planner.write('person-enrolled', { person: by, name: hashOf(utf8('planner')), roles: ['planner'] }),
    planner.write('person-enrolled', {
      person: personId(2),
      name: hashOf(utf8('crew')),
      roles: ['crew', 'inspector'],
      qualifiedUntil: '2027-03-31',
    }),
    ...crew.map(({ device, keys }, i) =>
      planner.write('device-enrolled', { device, key: hex(keys.publicKey), name: `phone ${i + 1}` }, { by }),
    ),
    planner.write(
      'plan-issued',
      {
        number: 'P-1',
        plan: hashOf(utf8('plan')),
        engine: '0.1.0',
        title: 'Skerrow Sound, spring outage',
        site: 'Skerrow Sound tidal yard',
        tools: [{ serial: 'SK-1', name: 'battery wrench', due: '2027-06-01' }],
      },
      { by },
    ),
    ...joints.map((slice) => planner.write('card-issued', { number: 'P-1', plan: hashOf(utf8('plan')), slice }, { by })),
    planner.write('tool-checked', { tool: 'SK-1', setting: '2/3', passed: true }, { by }),
  ];
}

const hex = (bytes: Uint8Array) => [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');

const SUBJECTS = ['joint', 'tool', 'battery', 'person', 'device', 'lot', 'nonconformance'] as const;

/** The whole state of a book, as one value. */
export const wholeState = (fold: Fold) => ({
  book: fold.state('book', 'book'),
  ...Object.fromEntries(SUBJECTS.map((subject) => [subject, fold.ids(subject).map((id) => fold.state(subject, id))])),
  nonconformances: fold.nonconformances(),
});
