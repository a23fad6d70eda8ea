/** How the way to the server stands: open, or to be asked now and then instead. */
export type Listening = 'live' | 'asking';

interface ListenOptions {
  /** of an enrolled device; a signed-in person is known by the cookie */
  readonly token: string | undefined;
  readonly onGrown: (size: number) => void;
  readonly onState: (state: Listening) => void;
  readonly signal: AbortSignal;
}

const AGAIN_MS = 3000;

/**
 * Tells whenever the log of a book has grown, by the server's own events. Where they do not come through, it asks every three seconds, and
 * tries again. Read from a stream: the browser's own reader of events cannot show a device's token.
 */
export async function listen(job: string, { token, onGrown, onState, signal }: ListenOptions): Promise<void> {
  while (!signal.aborted) {
    try {
      const answer = await fetch(`/api/v1/books/${job}/events`, {
        headers: token === undefined ? {} : { authorization: `Bearer ${token}` },
        signal,
      });
      if (answer.ok && answer.body) {
        onState('live');
        for await (const size of sizesIn(answer.body)) onGrown(size);
      }
    } catch {
      // away, or stopped: asked again below
    }
    if (signal.aborted) return;
    onState('asking');
    onGrown(Number.POSITIVE_INFINITY);
    await new Promise((resolve) => setTimeout(resolve, AGAIN_MS));
  }
}

/** Sizes out of a stream of server-sent events; comments that keep the way open are left out. */
export async function* sizesIn(stream: ReadableStream<Uint8Array>): AsyncGenerator<number> {
  const reader = stream.pipeThrough(new TextDecoderStream() as unknown as ReadableWritablePair<string, Uint8Array>).getReader();
  let held = '';
  for (let { value, done } = await reader.read(); !done; { value, done } = await reader.read()) {
    const lines = `${held}${value}`.split('\n');
    held = lines.pop()!;
    for (const line of lines) {
      if (!line.startsWith('data: ')) continue;
      const { size } = JSON.parse(line.slice(6)) as { readonly size: number };
      yield size;
    }
  }
}
