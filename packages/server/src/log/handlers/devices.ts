import { done, notice, refused } from '@clampwright/core';
import { noteKeyText } from '@clampwright/record';
import { keepPin, type PinCheck } from '@clampwright/sync';
import { allDevices, deviceRecord, enrolDevice, openEnrolment, revokeDevice, setDeviceBooks } from '../devices.ts';
import { SERVER } from '../log-key.ts';
import { mayGive } from '../principal.ts';
import { notFound } from '../reply.ts';
import type { Handlers } from './handler.ts';

export const deviceHandlers = {
  openEnrolment: async ({ body: { name, books } }, { context: { store, yard, now }, who }) =>
    mayGive(who, books, yard.id) ? done(await openEnrolment(store, name, books, now())) : notFound,
  enrol: async ({ body }, { context: { store, log, yard, now, enrolments }, from }) => {
    const wait = enrolments.take(from);
    if (wait > 0) return refused(notice('asked-too-often', { seconds: wait }));
    const enrolled = await enrolDevice(store, body, now());
    if (!enrolled) return refused(notice('code-not-valid', {}));
    const { device, token, record } = enrolled;
    return done({ device, token, name: record.name, log: noteKeyText(log.note), yard: yard.id, books: [...record.books] });
  },
  devices: async (_, { context: { store } }) =>
    done({
      devices: (await allDevices(store)).map(({ id, value: { token: _token, books, ...record } }) => ({
        device: id,
        ...record,
        books: [...books],
      })),
    }),
  revokeDevice: async ({ params: { device } }, { context: { store, now } }) =>
    (await revokeDevice(store, device, now())) ? done(undefined) : notFound,
  setDeviceBooks: async ({ params: { device }, body: { books } }, { context: { store, yard }, who }) => {
    const known = await deviceRecord(store, device);
    if (!known || !mayGive(who, [...known.books, ...books], yard.id)) return notFound;
    await setDeviceBooks(store, device, books);
    return done(undefined);
  },
  setPin: async ({ params: { person }, body: { pin } }, { context: { store } }) => {
    await store.access.put(SERVER, 'pin', person, await keepPin(person, pin));
    return done(undefined);
  },
  pins: async (_, { context: { store } }) => done({ pins: (await store.access.list<PinCheck>(SERVER, 'pin')).map(({ value }) => value) }),
} satisfies Partial<Handlers>;
