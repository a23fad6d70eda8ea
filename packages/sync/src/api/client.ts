import type { Notice } from '@clampwright/core';
import type { Answer } from '../transport.ts';
import { type Answered, type Asked, CONTRACT, type EndpointName } from './contract.ts';
import { type Endpoint, isSchema } from './endpoint.ts';

export interface ClientOptions {
  /** of the server, up to and without `/api` */
  readonly server: string;
  /** of an enrolled device; people are known by their cookie */
  readonly token?: string;
  readonly fetch?: typeof fetch;
  readonly timeoutMs?: number;
}

export type Client = <E extends EndpointName>(name: E, asked: Asked<E>) => Promise<Answer<Answered<E>>>;

/** Asks a server, in the terms of the contract. An answer that is not as the contract says counts as none. */
export function apiClient({ server, token, fetch: ask = fetch, timeoutMs = 60_000 }: ClientOptions): Client {
  return async <E extends EndpointName>(name: E, asked: Asked<E>): Promise<Answer<Answered<E>>> => {
    const { method, path, body: form, answer, status }: Endpoint = CONTRACT[name];
    const { params = {}, query = {}, body } = asked as { params?: Record<string, string>; query?: Record<string, number>; body?: unknown };
    const filled = path.replace(/\{(\w+)\}/g, (_, part: string) => encodeURIComponent(params[part]!));
    const search = new URLSearchParams(Object.entries(query).map(([key, value]) => [key, String(value)])).toString();
    const json = form !== undefined && isSchema(form);
    try {
      const response = await ask(`${server}/api/v1${filled}${search === '' ? '' : `?${search}`}`, {
        method,
        headers: {
          ...(token === undefined ? {} : { authorization: `Bearer ${token}` }),
          ...(form === undefined ? {} : { 'content-type': json ? 'application/json' : (form as { bytes: string }).bytes }),
        },
        ...(form === undefined ? {} : { body: json ? JSON.stringify(body) : (body as Uint8Array<ArrayBuffer>) }),
        signal: AbortSignal.timeout(timeoutMs),
      });
      // busy, full or gone for now: the same may go through later
      if (response.status >= 500 || response.status === 429 || response.status === 408) return unreachable(`status ${response.status}`);
      if (response.status !== status) return { kind: 'refused', notices: await noticesOf(response) };
      if (answer === 'none') return { kind: 'answered', value: undefined as unknown as Answered<E> };
      if (!isSchema(answer)) return { kind: 'answered', value: new Uint8Array(await response.arrayBuffer()) as Answered<E> };
      const read = answer.safeParse(await response.json());
      return read.success ? { kind: 'answered', value: read.data as Answered<E> } : unreachable('the answer is not as the contract says');
    } catch (error) {
      return unreachable((error as Error).message);
    }
  };
}

const unreachable = (why: string) => ({ kind: 'unreachable', why }) as const;

async function noticesOf(response: Response): Promise<readonly Notice[]> {
  try {
    return ((await response.json()) as { notices?: readonly Notice[] }).notices ?? [];
  } catch {
    return [];
  }
}
