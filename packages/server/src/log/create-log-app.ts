import { randomBytes } from 'node:crypto';
import { done, type Notice, notice, type Outcome, type Refused, refused } from '@clampwright/core';
import { CONTRACT, type Endpoint, type EndpointName, isSchema } from '@clampwright/sync';
import { Hono, type Context as HonoContext } from 'hono';
import { secure } from '../secure.ts';
import { ACCESS } from './access-table.ts';
import type { Context } from './context.ts';
import type { Call, Handler } from './handlers/handler.ts';
import { HANDLERS } from './handlers/index.ts';
import { isOneOf, knowsBook, type Principal, principalOf } from './principal.ts';
import { notFound, statusOf } from './reply.ts';
import { readBody, readJson } from './request-body.ts';
import { storeIsAway } from './store-is-away.ts';

/** One line of the server's log. */
export interface LogLine {
  readonly time: string;
  readonly level: 'info' | 'error';
  readonly event: string;
  readonly [detail: string]: string | number | undefined;
}

export interface LogAppOptions {
  readonly context: Context;
  readonly log?: (line: LogLine) => void;
  /** address of the asker */
  readonly addressOf?: (context: HonoContext) => string;
  /** what is served beside the API */
  readonly pages?: Hono;
}

const MOST_JSON_BYTES = 64 * 1024;

/** The HTTP interface of a yard's books: every endpoint of the contract, each behind the same gate. */
export function createLogApp({ context, log = () => {}, addressOf = () => 'here', pages }: LogAppOptions): Hono {
  const app = new Hono();
  app.use(secure);
  for (const name of Object.keys(CONTRACT) as EndpointName[]) {
    const endpoint: Endpoint = CONTRACT[name];
    app.on(endpoint.method, `/api/v1${endpoint.path.replace(/\{(\w+)\}/g, ':$1')}`, async (c) => {
      const began = performance.now();
      const from = addressOf(c);
      const { response, who } = await answer(name, endpoint, c, context, from, log);
      const ms = performance.now() - began;
      context.metrics.request(name, response.status, ms);
      log({
        time: context.now().toISOString(),
        level: 'info',
        event: 'request',
        endpoint: name,
        status: response.status,
        ms: Math.round(ms * 10) / 10,
        who,
        from,
      });
      return response;
    });
  }
  if (pages) app.route('/', pages);
  app.notFound(() => refusal(notFound));
  return app;
}

async function answer(
  name: EndpointName,
  endpoint: Endpoint,
  c: HonoContext,
  context: Context,
  from: string,
  log: (line: LogLine) => void,
): Promise<{ response: Response; who: string }> {
  const headers: [string, string][] = [];
  let who: Principal = { kind: 'anyone' };
  try {
    who = await principalOf(context.store, c.req.raw.headers, context.now());
    const asked = await admitted(name, endpoint, c, context, who, from);
    if (!asked.ok) return { response: refusal(asked), who: nameOf(who) };
    const call: Call = { context, who, request: c.req.raw, from, header: (key, value) => headers.push([key, value]) };
    const result = await (HANDLERS[name] as unknown as Handler<'whoAmI'>)(asked.value as never, call);
    return { response: result.ok ? answered(endpoint, result.value, headers) : refusal(result), who: nameOf(who) };
  } catch (error) {
    const request = randomBytes(6).toString('hex');
    const away = storeIsAway(error);
    log({
      time: context.now().toISOString(),
      level: 'error',
      event: away ? 'store not reachable' : 'defect',
      endpoint: name,
      request,
      error: String((error as Error).stack ?? error),
    });
    return {
      response: refusal(refused(away ? notice('store-not-reachable', {}) : notice('server-defect', { request }))),
      who: nameOf(who),
    };
  }
}

const nameOf = (who: Principal) => (who.kind === 'person' ? who.account.name : who.kind === 'device' ? who.id : 'anyone');

/** Everything that stands between a question and its handler. */
async function admitted(
  name: EndpointName,
  endpoint: Endpoint,
  c: HonoContext,
  { yard, questions }: Context,
  who: Principal,
  from: string,
): Promise<Outcome<unknown>> {
  const wait = questions.take(who.kind === 'anyone' ? from : nameOf(who));
  if (wait > 0) return refused(notice('asked-too-often', { seconds: wait }));
  // A browser names the page a question comes from; only our own may change anything.
  const origin = c.req.header('origin');
  if (endpoint.method !== 'GET' && origin !== undefined && new URL(c.req.url).host !== hostOf(origin))
    return refused(notice('from-another-site', {}));
  if (!isOneOf(who, ACCESS[name])) return refused(who.kind === 'anyone' ? notice('not-signed-in', {}) : notice('not-allowed', {}));
  const faults: Notice[] = [];
  const params = Object.fromEntries(Object.keys(endpoint.params ?? {}).map((key) => [key, c.req.param(key)]));
  for (const [key, schema] of Object.entries(endpoint.params ?? {})) if (!schema.safeParse(params[key]).success) return notFound;
  if (params.job !== undefined && !knowsBook(who, params.job, yard.id)) return notFound;
  const query: Record<string, unknown> = {};
  for (const [key, schema] of Object.entries(endpoint.query ?? {})) {
    const text = c.req.query(key) ?? '';
    const read = schema.safeParse(/^\d{1,16}$/.test(text) ? Number(text) : undefined);
    if (read.success) query[key] = read.data;
    else faults.push(notice('question-malformed', { field: key }));
  }
  if (faults.length > 0) return refused(...faults);
  const body = await readQuestion(endpoint, c.req.raw);
  return body.ok ? done({ params, query, body: body.value }) : body;
}

function hostOf(origin: string): string | undefined {
  try {
    return new URL(origin).host;
  } catch {
    return undefined;
  }
}

async function readQuestion({ body: form }: Endpoint, request: Request): Promise<Outcome<unknown>> {
  if (form === undefined) return done(undefined);
  if (!isSchema(form)) return form.bytes === STREAMED ? done(undefined) : readBody(request, form.most);
  const bytes = await readBody(request, MOST_JSON_BYTES);
  if (!bytes.ok) return bytes;
  const json = readJson(bytes.value);
  if (!json.ok) return json;
  const read = form.safeParse(json.value);
  return read.success
    ? done(read.data)
    : refused(...read.error.issues.map(({ path }) => notice('question-malformed', { field: path.join('.') || 'body' })));
}
/** Bodies of this kind may be long: the handler takes them as they come. */
const STREAMED = 'application/octet-stream';

const TYPES = {
  bytes: 'application/octet-stream',
  lines: 'application/x-ndjson',
  events: 'text/event-stream',
  text: 'text/plain; version=0.0.4; charset=utf-8',
  none: '',
} as const;

function answered({ answer: medium, status }: Endpoint, value: unknown, extra: readonly [string, string][]): Response {
  const headers = new Headers(extra as [string, string][]);
  if (!headers.has('Cache-Control')) headers.set('Cache-Control', 'no-store');
  if (isSchema(medium)) return Response.json(value, { status, headers });
  if (medium === 'none') return new Response(null, { status, headers });
  if (!headers.has('Content-Type')) headers.set('Content-Type', TYPES[medium]);
  const body =
    typeof value === 'string' || value instanceof Uint8Array
      ? (value as string | Uint8Array<ArrayBuffer>)
      : streamed(value as AsyncGenerator<Uint8Array>);
  return new Response(body, { status, headers });
}

function streamed(bytes: AsyncGenerator<Uint8Array>): ReadableStream<Uint8Array> {
  return new ReadableStream({
    pull: async (controller) => {
      const { value, done: ended } = await bytes.next();
      if (ended) controller.close();
      else controller.enqueue(value);
    },
    // whoever waits inside is woken by the question's own signal, or by the next heartbeat
    cancel: () => {
      bytes.return(undefined).catch(() => {});
    },
  });
}

function refusal(refusing: Refused): Response {
  const status = statusOf(refusing);
  const seconds = refusing.notices.flatMap(({ code, params }) => (code === 'asked-too-often' ? [params.seconds] : []))[0];
  return Response.json(
    { notices: refusing.notices },
    {
      status,
      headers: {
        'Cache-Control': 'no-store',
        ...(seconds === undefined ? {} : { 'Retry-After': String(seconds) }),
        ...(status === 503 ? { 'Retry-After': '5' } : {}),
        // the rest of a body that was not read must not be taken for the next question
        ...(status === 413 ? { Connection: 'close' } : {}),
      },
    },
  );
}
