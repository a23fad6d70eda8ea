import { deviceIdOf, idOf, issuePlan, keyPairOf, utf8 } from '@clampwright/record';
import { openDevice } from '@clampwright/sync';
import { type Database, type Identity, keep } from '../device/database.ts';
import { browserShelf } from '../device/shelf.ts';

const random = (bytes: number) => crypto.getRandomValues(new Uint8Array(bytes));
const hex = (bytes: Uint8Array) => [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');

/** Issues the demo yard's plan on this device alone, with one person who practises. */
export async function beginPractice(db: Database, name: string): Promise<void> {
  const { default: demo } = await import('virtual:practice-job');
  await db.clear('shelf');
  await db.clear('kept');
  const keys = keyPairOf(random(32));
  const job = idOf('job', random(16));
  const device = openDevice({ shelf: browserShelf(db), keys, now: () => new Date() });
  const person = idOf('person', random(16));
  const nameHash = await device.attach(job, utf8(name));
  await device.append(job, 'device-enrolled', { device: device.id, key: hex(keys.publicKey), name: 'practice' });
  await device.append(job, 'person-enrolled', { person, name: nameHash, roles: ['planner', 'crew', 'inspector'] });
  const issue = issuePlan(demo.job, demo.plan, demo.valves, { number: 'PRACTICE', jointId: () => idOf('joint', random(16)) });
  for (const bytes of issue.attachments) await device.attach(job, bytes);
  for (const { kind, body } of issue.entries) await device.append(job, kind, body, { by: person });
  await keep(db, 'holder', person);
  await keep(db, 'identity', {
    secret: keys.secret,
    device: deviceIdOf(keys.publicKey),
    name: 'practice',
    token: '',
    log: '',
    yard: '',
    books: [job],
  } satisfies Identity);
}
