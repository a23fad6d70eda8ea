import { done, notice, refused } from '@clampwright/core';
import { writeBackup } from '@clampwright/store';
import { signedIn } from '../accounts.ts';
import { openExport } from '../open-export.ts';
import { isPicture, organisationOf, setOrganisation } from '../organisation.ts';
import { notFound } from '../reply.ts';
import { zipped } from '../zip-stream.ts';
import type { Handlers } from './handler.ts';
import { person } from './session.ts';

/** What keeps and carries away: the whole yard, or one job; and whose papers they are. */
export const keepingHandlers = {
  exportBook: async ({ params: { job } }, { context: { store }, header }) => {
    if ((await store.tail(job)).size === 0) return notFound;
    header('Content-Type', 'application/zip');
    header('Content-Disposition', `attachment; filename="${job}-open.zip"`);
    return done(zipped(openExport(store, job)));
  },
  backup: async ({ body: { password } }, call) => {
    const { account } = person(call);
    const { store, signIns, now } = call.context;
    // it holds every job, every account and the log's own key: a session left open is not enough
    if (account.books !== 'all') return refused(notice('not-allowed', {}));
    const wait = signIns.take(`name ${account.name.toLowerCase()}`);
    if (wait > 0) return refused(notice('asked-too-often', { seconds: wait }));
    if (!(await signedIn(store, account.name, password))) return refused(notice('sign-in-failed', {}));
    const made = now();
    call.header('Content-Disposition', `attachment; filename="clampwright-${made.toISOString().slice(0, 10)}.backup"`);
    return done(writeBackup(store, made));
  },
  organisation: async (_, { context: { store, organisation } }) => {
    const told = await organisationOf(store, organisation);
    return done({
      ...(told === undefined ? {} : { name: told.name }),
      ...(told?.address === undefined ? {} : { address: told.address }),
      mark: told?.mark !== undefined,
    });
  },
  setOrganisation: async ({ body }, { context: { store, organisation } }) => {
    if (typeof body.mark === 'string' && !isPicture(body.mark)) return refused(notice('question-malformed', { field: 'mark' }));
    await setOrganisation(store, body, await organisationOf(store, organisation));
    return done(undefined);
  },
} satisfies Partial<Handlers>;
