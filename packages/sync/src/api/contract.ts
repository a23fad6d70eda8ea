import { BOOK_PATTERN, DEVICE_PATTERN, idPattern, ROLES } from '@clampwright/record';
import { z } from 'zod/mini';
import type { Endpoint } from './endpoint.ts';

const text = (most: number) => z.string().check(z.minLength(1), z.maxLength(most));
const job = z.string().check(z.regex(BOOK_PATTERN));
const device = z.string().check(z.regex(DEVICE_PATTERN));
const person = z.string().check(z.regex(idPattern('person')));
const hash = z.string().check(z.regex(/^[0-9a-f]{64}$/));
const name = z.string().check(z.regex(/^[\p{L}\p{N}][\p{L}\p{N} ._@'-]{0,79}$/u));
const password = z.string().check(z.minLength(10), z.maxLength(200));
const roles = z.array(z.enum(ROLES)).check(z.minLength(1), z.maxLength(ROLES.length));
const books = z.array(job).check(z.maxLength(1000));
const count = z.int().check(z.minimum(0), z.maximum(1e15));
const instant = z.string();
const anything = z.record(z.string(), z.unknown());
const ofBook = { job };

const passkey = z.string().check(z.regex(/^[A-Za-z0-9_-]{16,1366}$/));
const keptPasskey = z.object({ passkey, label: z.string(), added: instant });

const account = z.object({ name, roles, books: z.union([books, z.literal('all')]), person: z.optional(person), shared: z.boolean() });
const checkpoint = z.object({ checkpoint: z.string() });
const proof = z.object({ proof: z.array(z.string()) });

/** Every endpoint there is, by name. */
export const CONTRACT = {
  health: {
    method: 'GET',
    path: '/health',
    summary: 'Is the server well, and its store?',
    answer: z.object({ ok: z.boolean(), engine: z.string() }),
    status: 200,
  },
  metrics: { method: 'GET', path: '/metrics', summary: 'Counts and times, in the Prometheus text format.', answer: 'text', status: 200 },
  document: { method: 'GET', path: '/openapi.json', summary: 'This contract as OpenAPI 3.1.', answer: anything, status: 200 },
  signIn: {
    method: 'POST',
    path: '/session',
    summary: 'Sign in. The session is a cookie that scripts cannot read.',
    body: z.strictObject({ name, password: text(200) }),
    answer: account,
    status: 200,
  },
  whoAmI: { method: 'GET', path: '/session', summary: 'Who is signed in.', answer: account, status: 200 },
  signOut: { method: 'DELETE', path: '/session', summary: 'Sign out.', answer: 'none', status: 204 },
  addAccount: {
    method: 'POST',
    path: '/accounts',
    summary: 'Make an account. `shared`: on a device of several people, signed out after a short idle time.',
    body: z.strictObject({
      name,
      password,
      roles,
      books: z.union([books, z.literal('all')]),
      person: z.optional(person),
      shared: z.optional(z.boolean()),
    }),
    answer: account,
    status: 201,
  },
  accounts: { method: 'GET', path: '/accounts', summary: 'All accounts.', answer: z.object({ accounts: z.array(account) }), status: 200 },
  removeAccount: {
    method: 'DELETE',
    path: '/accounts/{name}',
    summary: 'Remove an account; its sessions end.',
    params: { name },
    answer: 'none',
    status: 204,
  },
  changePassword: {
    method: 'PUT',
    path: '/session/password',
    summary: 'Change one’s own password; all other sessions of the account end.',
    body: z.strictObject({ old: text(200), password }),
    answer: 'none',
    status: 204,
  },
  offerPasskey: {
    method: 'POST',
    path: '/session/passkeys/offer',
    summary: 'What a browser needs to make a passkey (W3C Web Authentication); holds for five minutes.',
    answer: anything,
    status: 200,
  },
  addPasskey: {
    method: 'POST',
    path: '/session/passkeys',
    summary: 'Keep the passkey that a browser made of the offer.',
    body: z.strictObject({ label: text(80), response: anything }),
    answer: keptPasskey,
    status: 201,
  },
  passkeys: {
    method: 'GET',
    path: '/session/passkeys',
    summary: 'One’s own passkeys.',
    answer: z.object({ passkeys: z.array(keptPasskey) }),
    status: 200,
  },
  removePasskey: {
    method: 'DELETE',
    path: '/session/passkeys/{passkey}',
    summary: 'Remove a passkey of one’s own.',
    params: { passkey },
    answer: 'none',
    status: 204,
  },
  askPasskey: {
    method: 'POST',
    path: '/session/passkey/question',
    summary: 'What a browser needs to show a passkey; holds for five minutes.',
    answer: anything,
    status: 200,
  },
  signInWithPasskey: {
    method: 'POST',
    path: '/session/passkey',
    summary: 'Sign in with a passkey.',
    body: z.strictObject({ response: anything }),
    answer: account,
    status: 200,
  },
  openEnrolment: {
    method: 'POST',
    path: '/enrolments',
    summary: 'A code that enrols one device, once, within ten minutes.',
    body: z.strictObject({ name, books }),
    answer: z.object({ code: z.string(), expires: instant }),
    status: 201,
  },
  enrol: {
    method: 'POST',
    path: '/devices',
    summary: 'Enrol a device with a code. `signature`: Ed25519 over `clampwright-enrol-1`, a newline and the code, in hexadecimal.',
    body: z.strictObject({ code: text(40), key: hash, signature: z.string().check(z.regex(/^[0-9a-f]{128}$/)) }),
    answer: z.object({ device, name: z.string(), token: z.string(), log: z.string(), yard: job, books }),
    status: 201,
  },
  devices: {
    method: 'GET',
    path: '/devices',
    summary: 'Enrolled devices.',
    answer: z.object({
      devices: z.array(z.object({ device, name: z.string(), key: hash, books, enrolled: instant, revoked: z.optional(instant) })),
    }),
    status: 200,
  },
  revokeDevice: {
    method: 'DELETE',
    path: '/devices/{device}',
    summary: 'Revoke a device: its token opens nothing any more.',
    params: { device },
    answer: 'none',
    status: 204,
  },
  setDeviceBooks: {
    method: 'PUT',
    path: '/devices/{device}/books',
    summary: 'Which books a device takes part in, besides the yard’s.',
    params: { device },
    body: z.strictObject({ books }),
    answer: 'none',
    status: 204,
  },
  setPin: {
    method: 'PUT',
    path: '/pins/{person}',
    summary: 'Set the PIN by which a person is named on enrolled devices.',
    params: { person },
    body: z.strictObject({ pin: z.string().check(z.regex(/^\d{4,12}$/)) }),
    answer: 'none',
    status: 204,
  },
  pins: {
    method: 'GET',
    path: '/pins',
    summary: 'What an enrolled device checks PINs by while it is offline.',
    answer: z.object({ pins: z.array(z.object({ person, salt: z.string(), iterations: count, hash })) }),
    status: 200,
  },
  addBook: {
    method: 'POST',
    path: '/books',
    summary: 'Open the book of a new job.',
    body: z.strictObject({ title: text(200) }),
    answer: z.object({ job, title: z.string() }),
    status: 201,
  },
  books: {
    method: 'GET',
    path: '/books',
    summary: 'The books one may read.',
    answer: z.object({ books: z.array(z.object({ job, title: z.string(), size: count })) }),
    status: 200,
  },
  pushBatch: {
    method: 'POST',
    path: '/books/{job}/batches',
    summary: 'A batch of signed entries: gzip of heads, an empty line, entries. Answers with their receipts, one a line.',
    params: ofBook,
    body: { bytes: 'application/gzip', most: 5 * 1024 * 1024 },
    answer: 'lines',
    status: 200,
  },
  entries: {
    method: 'GET',
    path: '/books/{job}/entries',
    summary: 'A stretch of the log: the checkpoint, then receipt and entry by turns, one a line.',
    params: ofBook,
    query: { from: count, limit: z.int().check(z.minimum(1), z.maximum(1000)) },
    answer: 'lines',
    status: 200,
  },
  checkpoint: {
    method: 'GET',
    path: '/books/{job}/checkpoint',
    summary: 'The checkpoint of the log as it stands, a signed note.',
    params: ofBook,
    answer: checkpoint,
    status: 200,
  },
  inclusion: {
    method: 'GET',
    path: '/books/{job}/proofs/inclusion',
    summary: 'RFC 9162 inclusion proof of the entry at a place, in base64.',
    params: ofBook,
    query: { index: count, size: count },
    answer: proof,
    status: 200,
  },
  consistency: {
    method: 'GET',
    path: '/books/{job}/proofs/consistency',
    summary: 'RFC 9162 consistency proof from one size to another, in base64.',
    params: ofBook,
    query: { first: count, second: count },
    answer: proof,
    status: 200,
  },
  state: {
    method: 'GET',
    path: '/books/{job}/state',
    summary: 'What the entries add up to: the book, its joints in short, tools, batteries.',
    params: ofBook,
    answer: z.object({ size: count, book: anything, joints: z.array(anything), tools: z.array(anything), batteries: z.array(anything) }),
    status: 200,
  },
  joint: {
    method: 'GET',
    path: '/books/{job}/joints/{joint}',
    summary: 'The state of one joint, bolt by bolt.',
    params: { job, joint: z.string().check(z.regex(idPattern('joint'))) },
    answer: anything,
    status: 200,
  },
  nonconformances: {
    method: 'GET',
    path: '/books/{job}/nonconformances',
    summary: 'What was raised by people and what contradicts itself, and how it was settled.',
    params: ofBook,
    answer: z.object({ nonconformances: z.array(anything) }),
    status: 200,
  },
  events: {
    method: 'GET',
    path: '/books/{job}/events',
    summary: 'Server-sent events: `size` whenever the log has grown.',
    params: ofBook,
    answer: 'events',
    status: 200,
  },
  putAttachment: {
    method: 'PUT',
    path: '/books/{job}/attachments/{hash}',
    summary: 'Keep a file under its SHA-256.',
    params: { job, hash },
    body: { bytes: 'application/octet-stream', most: 64 * 1024 * 1024 },
    answer: 'none',
    status: 204,
  },
  attachment: {
    method: 'GET',
    path: '/books/{job}/attachments/{hash}',
    summary: 'A file by its SHA-256.',
    params: { job, hash },
    answer: 'bytes',
    status: 200,
  },
  eraseAttachment: {
    method: 'DELETE',
    path: '/books/{job}/attachments/{hash}',
    summary: 'Erase a file: a name or a photo. Its hash stays in the log.',
    params: { job, hash },
    answer: 'none',
    status: 204,
  },
  handover: {
    method: 'GET',
    path: '/books/{job}/handover',
    summary: 'The handover file as the log stands.',
    params: ofBook,
    answer: 'bytes',
    status: 200,
  },
  exportBook: {
    method: 'GET',
    path: '/books/{job}/export',
    summary: 'Everything a job holds as plain files in a ZIP archive (docs/open-export.md): no secrets, no accounts.',
    params: ofBook,
    answer: 'bytes',
    status: 200,
  },
  backup: {
    method: 'POST',
    path: '/backup',
    summary: 'All books, attachments, accounts and the log’s own key in one file, for `clampwright restore`. Asks for the password again.',
    body: z.strictObject({ password: text(200) }),
    answer: 'bytes',
    status: 200,
  },
  organisation: {
    method: 'GET',
    path: '/organisation',
    summary: 'Whose reports the server hands out.',
    answer: z.object({ name: z.optional(z.string()), address: z.optional(z.string()), mark: z.boolean() }),
    status: 200,
  },
  setOrganisation: {
    method: 'PUT',
    path: '/organisation',
    summary:
      'Name, address and mark for reports. `mark`: PNG or JPEG in base64, 40 kB at most; without it the mark stays, `null` takes it away.',
    body: z.strictObject({
      name: text(80),
      address: z.optional(z.string().check(z.maxLength(200))),
      mark: z.optional(z.nullable(z.string().check(z.regex(/^[A-Za-z0-9+/]{1,55000}={0,2}$/)))),
    }),
    answer: 'none',
    status: 204,
  },
  report: {
    method: 'GET',
    path: '/books/{job}/report/{languages}',
    summary: 'The report as the log stands, as a PDF. `languages`: one, or two with a hyphen between; the second stands beneath the first.',
    params: { job, languages: z.string().check(z.regex(/^[a-z]{2}(-[a-z]{2})?$/)) },
    answer: 'bytes',
    status: 200,
  },
} as const satisfies Readonly<Record<string, Endpoint>>;

export type EndpointName = keyof typeof CONTRACT;

/** What an endpoint asks for. */
export type Asked<E extends EndpointName> = Part<'params', ParamsOf<(typeof CONTRACT)[E]>, string> &
  Part<'query', QueryOf<(typeof CONTRACT)[E]>, number> &
  ([BodyOf<(typeof CONTRACT)[E]>] extends [never] ? unknown : { readonly body: BodyOf<(typeof CONTRACT)[E]> });
type Part<P extends string, Names extends string, T> = [Names] extends [never]
  ? unknown
  : { readonly [K in P]: { readonly [N in Names]: T } };
type ParamsOf<E> = E extends { readonly params: infer P } ? keyof P & string : never;
type QueryOf<E> = E extends { readonly query: infer Q } ? keyof Q & string : never;
type BodyOf<E> = E extends { readonly body: infer B } ? (B extends z.ZodMiniType ? z.infer<B> : Uint8Array) : never;

/** What it answers. */
export type Answered<E extends EndpointName> = (typeof CONTRACT)[E]['answer'] extends infer A
  ? A extends z.ZodMiniType
    ? z.infer<A>
    : A extends 'none'
      ? undefined
      : Uint8Array
  : never;
