import { type Receipt, readReceipt } from '@clampwright/record';
import { apiClient, type ClientOptions } from './api/client.ts';
import { readLines } from './lines.ts';
import type { Answer, Transport } from './transport.ts';

/** The way to a server over its HTTP interface, for an enrolled device. */
export function httpTransport(options: ClientOptions & { readonly token: string }): Transport {
  const call = apiClient(options);
  return {
    push: async (job, batch) => then(await call('pushBatch', { params: { job }, body: batch }), readReceipts),
    pull: (job, from, limit) => call('entries', { params: { job }, query: { from, limit } }),
    putAttachment: async (job, hash, bytes) =>
      then(await call('putAttachment', { params: { job, hash }, body: bytes }), () => true as const),
  };
}

function then<A, B>(answer: Answer<A>, read: (value: A) => B | undefined): Answer<B> {
  if (answer.kind !== 'answered') return answer;
  const value = read(answer.value);
  return value === undefined ? { kind: 'unreachable', why: 'the answer was cut short' } : { kind: 'answered', value };
}

function readReceipts(bytes: Uint8Array): readonly Receipt[] | undefined {
  const receipts = readLines(bytes)?.map(readReceipt);
  return receipts?.every((one) => one.ok) ? receipts.flatMap((one) => (one.ok ? [one.value] : [])) : undefined;
}
