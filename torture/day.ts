import { hashOf, idOf, type KeyPair, openFold, utf8 } from '../packages/record/src/index.ts';
import { jointId, personId, testKeys, testSlice, wholeState } from '../packages/record/src/test-book.ts';
import { checkBook, type Store } from '../packages/store/src/index.ts';
import { type Device, memoryShelf, openDevice, type Shelf, syncBook } from '../packages/sync/src/index.ts';
import { deviceKeys, directTransport, noteKeyOf } from '../packages/sync/src/test-server.ts';
import { flaky, type Late } from './flaky.ts';
import { type Random, randomBy } from './random.ts';

interface Phone {
  readonly keys: KeyPair;
  readonly skewMs: number;
  shelf: ReturnType<typeof memoryShelf>;
  device: Device;
  backup?: ReadonlyMap<string, Uint8Array>;
}

export interface Day {
  readonly seed: number;
  readonly entries: number;
  readonly faults: readonly string[];
  /** of the state all devices came to: the same for the same seed */
  readonly state: string;
}

const LOG_KEYS = testKeys(99);
const LOG_KEY = noteKeyOf(LOG_KEYS, 'skerrow');
const STEPS = ['first step', 'second step'] as const;
const TWO_DAYS_MS = 2 * 24 * 3_600_000;

/**
 * One simulated day: devices with wrong clocks write and sync over a bad network to one or two servers; phones are copied and set back,
 * servers stop and start. In the evening the network mends, and every entry has to be everywhere.
 */
export async function simulatedDay(
  seed: number,
  servers: { readonly stores: () => readonly Store[]; readonly restart?: () => Promise<void> },
): Promise<Day> {
  const random = randomBy(seed);
  const job = idOf(
    'job',
    Uint8Array.from({ length: 16 }, (_, i) => (seed >>> (8 * (i % 4))) & 255),
  );
  let minute = 0;
  const keys = Array.from({ length: 2 + random.below(4) }, (_, i) => testKeys(i + 1));
  const known = deviceKeys(...keys);
  const start = (own: KeyPair, skewMs: number, shelf: ReturnType<typeof memoryShelf>): Phone => ({
    keys: own,
    skewMs,
    shelf,
    device: openOn(own, skewMs, shelf),
  });
  const openOn = (own: KeyPair, skewMs: number, shelf: Shelf) =>
    openDevice({ shelf, keys: own, now: () => new Date(Date.UTC(2026, 10, 25, 6) + minute * 60_000 + skewMs), offsetMinutes: () => 0 });
  const phones = keys.map((own) => start(own, Math.round((random.next() * 2 - 1) * TWO_DAYS_MS), memoryShelf()));
  const way = () => directTransport(random.one(servers.stores()), LOG_KEYS, 'skerrow', known);
  const delayed: Late[] = [];
  const written = new Set<string>();
  const acknowledged = new Set<string>();
  /** written, and gone with a phone that was set back before it had sent them */
  const mayBeLost = new Set<string>();
  const faults: string[] = [];

  const write = async (phone: Phone) => {
    const kept = await writeSomething(phone.device, job, random, keys.length);
    written.add(kept.hash);
  };
  const sync = async (phone: Phone, mended = false) => {
    const transport = way();
    const synced = await syncBook(phone.device, job, mended ? transport : flaky(transport, random, delayed), LOG_KEY);
    if (synced.stopped && synced.stopped.why !== 'unreachable')
      faults.push(`sync: ${synced.stopped.why} ${synced.stopped.notices.map(({ code }) => code).join()}`);
    const { acknowledged: upTo } = await phone.device.chain(job);
    for (const { hash, entry } of await phone.device.outbox(job)) if (entry.sequence < upTo) acknowledged.add(hash);
    return synced;
  };

  for (let step = 0, steps = 30 + random.below(50); step < steps; step += 1) {
    minute += random.below(20);
    const phone = random.one(phones);
    const luck = random.next();
    if (luck < 0.55) for (let i = random.below(4); i >= 0; i -= 1) await write(phone);
    else if (luck < 0.85) await sync(phone);
    else if (luck < 0.89) await delayed.splice(random.below(delayed.length), 1)[0]?.(way());
    else if (luck < 0.92) phone.backup = phone.shelf.copy();
    else if (luck < 0.94 && phones.length < 8) phones.push(start(phone.keys, phone.skewMs, memoryShelf(phone.shelf.copy())));
    else if (luck < 0.97 && phone.backup) {
      for (const { hash } of await phone.device.outbox(job)) mayBeLost.add(hash);
      phone.shelf = memoryShelf(phone.backup);
      phone.device = openOn(phone.keys, phone.skewMs, phone.shelf);
    } else if (luck > 0.99) await servers.restart?.();
  }

  for (const late of delayed) await late(way());
  for (let round = 0; round < 2; round += 1) for (const phone of phones) await sync(phone, true);

  const [store] = servers.stores();
  const rows = await store!.rows(job, 0, 100_000);
  const there = new Set<string>(rows.map(({ receipt }) => receipt.entry));
  if (there.size !== rows.length) faults.push('an entry stands at two places');
  for (const hash of there) if (!written.has(hash)) faults.push('an entry nobody wrote');
  for (const hash of written) if (!there.has(hash) && !mayBeLost.has(hash)) faults.push('an entry is lost');
  for (const hash of acknowledged) if (!there.has(hash)) faults.push('an acknowledged entry is lost');
  for (const one of servers.stores()) {
    const { fault } = await checkBook(one, job, { log: LOG_KEY, device: async (id) => known.get(id) });
    if (fault !== undefined) faults.push(fault);
  }
  const states = new Set<string>();
  for (const { device } of phones) {
    if ((await device.outbox(job)).length > 0) faults.push('an outbox is not empty in the evening');
    const fold = openFold();
    for (const kept of await device.entries(job)) fold.add(kept);
    if (fold.size() !== there.size) faults.push('a device does not hold the whole book');
    states.add(
      hashOf(
        utf8(JSON.stringify(wholeState(fold), (_, value: unknown) => (value instanceof Map || value instanceof Set ? [...value] : value))),
      ),
    );
  }
  if (states.size > 1) faults.push('devices come to different states');
  return { seed, entries: rows.length, faults: [...new Set(faults)], state: [...states].sort().join() };
}

/** Something a crew might tell: mostly a bolt, on one of two joints that all of them work on. */
function writeSomething(device: Device, job: string, random: Random, people: number) {
  const by = personId(1 + random.below(people));
  const joint = jointId(1 + random.below(2));
  const bolt = 1 + random.below(6);
  const luck = random.next();
  const step = random.one(STEPS);
  if (luck < 0.6)
    return device.append(job, 'bolt-tightened', { joint, bolt, step, tool: 'SK-1', setting: '2/3', battery: 'B1', end: 'stall' }, { by });
  if (luck < 0.68) return device.append(job, 'batch-tightened', { joint, bolts: [1, 2, 3], step, end: 'stall' }, { by });
  if (luck < 0.74) return device.append(job, 'loosened', { joint, bolts: [bolt] }, { by });
  if (luck < 0.8) return device.append(job, 'tool-checked', { tool: 'SK-1', setting: '2/3', passed: random.chance(0.9) }, { by });
  if (luck < 0.84) return device.append(job, 'joint-signed', { joint, as: 'crew' }, { by });
  if (luck < 0.88) return device.append(job, 'bolt-trouble', { joint, bolt, what: 'no stall' }, { by });
  if (luck < 0.9)
    return device.append(job, 'card-issued', { number: 'P-1', plan: hashOf(utf8('plan')), slice: testSlice(1 + random.below(2), 6) });
  if (luck < 0.92)
    return device.append(job, 'plan-issued', {
      number: `P-${random.below(3)}`,
      plan: hashOf(utf8('plan')),
      engine: '0.1.0',
      title: 'Skerrow Sound',
      site: 'yard',
      tools: [{ serial: 'SK-1', name: 'wrench', due: '2027-01-01' }],
    });
  if (luck < 0.96) return device.append(job, 'person-enrolled', { person: by, name: hashOf(utf8(by)), roles: ['crew'] });
  return device.append(job, 'note-written', { text: 'wind' }, { by });
}
