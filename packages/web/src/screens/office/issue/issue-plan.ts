import { zipFolder } from '@clampwright/papers/edit';
import { hashOf, idOf, issuedJoints, issuePlan, utf8 } from '@clampwright/record';
import type { Files } from '../../../draft/draft.ts';
import type { Book } from '../../../job/book.ts';
import type { OpenWorld } from '../../../job/world.ts';
import type { Whole } from '../../../planning/engine.ts';

/** What is agreed to by name before a plan is issued. */
interface Approval {
  readonly text: string;
  readonly tags: readonly string[];
  readonly authority: string;
}

export interface Issuing {
  readonly number: string;
  /** what becomes of work under the plan before; none was issued: undefined */
  readonly earlier: 'continue' | 'stop' | undefined;
  readonly approvals: readonly Approval[];
  readonly files: Files;
  readonly by: string | undefined;
}

/** The name under which a plan's files lie in the book. */
export const filesName = (number: string): string => `${number}.zip`;

const random = () => crypto.getRandomValues(new Uint8Array(16));

/** Freezes a plan and writes it into the job's book: its bytes, a card each joint, what was approved, and the files it was made from. */
export async function issueInto(
  { device }: OpenWorld,
  book: Book,
  { job, plan, valves }: Whole,
  { number, earlier, approvals, files, by }: Issuing,
): Promise<string> {
  const known = new Map(book.joints().map(({ tag, joint }) => [tag, joint]));
  const fresh = new Map<string, string>();
  const jointId = (tag: string) => {
    const id = known.get(tag) ?? fresh.get(tag) ?? idOf('joint', random());
    fresh.set(tag, id);
    return id;
  };
  const before = issuedJoints(book.fold);
  const issued = issuePlan(job, plan, valves, { number, jointId, before, ...(earlier === undefined ? {} : { earlier }) });
  for (const bytes of issued.attachments) await device.attach(book.job, bytes);
  const archive = zipFolder(files);
  await device.attach(book.job, archive);
  const names = new Set(book.fold.ids('person').map((id) => book.nameOf(id)));
  for (const { name } of plan.job.people.filter((one) => !names.has(one.name)))
    await book.record(
      'person-enrolled',
      { person: idOf('person', random()), name: await device.attach(book.job, utf8(name)), roles: ['crew'] },
      by,
    );
  for (const { kind, body } of issued.entries) await book.record(kind, body, by);
  for (const [at, { text, tags, authority }] of approvals.entries())
    await book.record('concession-granted', { number: `${number}-${at + 1}`, joints: tags.map(jointId), text, authority }, by);
  await book.record('imported', { file: hashOf(archive), name: filesName(number), text: 'job folder of the plan' }, by);
  await book.refresh();
  return issued.plan.plan;
}
