import type { Notice } from '@clampwright/core';
import { type Receipt, readReceipt } from '@clampwright/record';
import { readLines } from './lines.ts';
import type { Answer, Transport } from './transport.ts';

export interface HttpOptions {
  /** of the server, up to and without `/api` */
  readonly server: string;
  /** the device's token, given at enrolment */
  readonly token: string;
  readonly fetch?: typeof fetch;
  readonly timeoutMs?: number;
}

/** The way to a server over its HTTP interface. */
export function httpTransport({ server, token, fetch: ask = fetch, timeoutMs = 60_000 }: HttpOptions): Transport {
  const call = async <T>(path: string, init: RequestInit, read: (bytes: Uint8Array) => T | undefined): Promise<Answer<T>> => {
    try {
      const answer = await ask(`${server}/api/v1/books/${path}`, {
        ...init,
        headers: { ...init.headers, authorization: `Bearer ${token}` },
        signal: AbortSignal.timeout(timeoutMs),
      });
      const bytes = new Uint8Array(await answer.arrayBuffer());
      // busy, full or gone for now: the same may go through later
      if (answer.status >= 500 || answer.status === 429 || answer.status === 408)
        return { kind: 'unreachable', why: `status ${answer.status}` };
      if (!answer.ok) return { kind: 'refused', notices: noticesOf(bytes) };
      const value = read(bytes);
      return value === undefined ? { kind: 'unreachable', why: 'the answer was cut short' } : { kind: 'answered', value };
    } catch (error) {
      return { kind: 'unreachable', why: (error as Error).message };
    }
  };
  const body = (bytes: Uint8Array) => bytes as Uint8Array<ArrayBuffer>;
  return {
    push: (job, batch) =>
      call(`${job}/batches`, { method: 'POST', body: body(batch), headers: { 'content-type': 'application/gzip' } }, readReceipts),
    pull: (job, from, limit) => call(`${job}/entries?from=${from}&limit=${limit}`, {}, (bytes) => bytes),
    putAttachment: (job, hash, bytes) =>
      call(
        `${job}/attachments/${hash}`,
        { method: 'PUT', body: body(bytes), headers: { 'content-type': 'application/octet-stream' } },
        () => true as const,
      ),
  };
}

function readReceipts(bytes: Uint8Array): readonly Receipt[] | undefined {
  const receipts = readLines(bytes)?.map(readReceipt);
  return receipts?.every((one) => one.ok) ? receipts.flatMap((one) => (one.ok ? [one.value] : [])) : undefined;
}

function noticesOf(bytes: Uint8Array): readonly Notice[] {
  try {
    const { notices } = JSON.parse(new TextDecoder().decode(bytes)) as { notices?: readonly Notice[] };
    return notices ?? [];
  } catch {
    return [];
  }
}
