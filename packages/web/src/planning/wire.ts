/** Questions and answers between a page and a worker, by number; what a worker tells unasked has none. */
interface Asked {
  readonly id: number;
  readonly ask: string;
  readonly args: readonly unknown[];
}
interface Answer {
  readonly id: number;
  readonly value?: unknown;
  readonly failed?: string;
}

type Method = (...args: never[]) => unknown;

/** Answers questions in a worker by the functions given. */
export function answer(methods: Readonly<Record<string, Method>>): void {
  addEventListener('message', ({ data }: MessageEvent<Asked>) => {
    void (async () => {
      const { id, ask, args } = data;
      try {
        postMessage({ id, value: await methods[ask]!(...(args as never[])) } satisfies Answer);
      } catch (error) {
        postMessage({ id, failed: error instanceof Error ? `${error.message}\n${error.stack ?? ''}` : String(error) } satisfies Answer);
      }
    })();
  });
}

/** Asks a worker. */
export interface Line {
  readonly ask: <T>(ask: string, ...args: readonly unknown[]) => Promise<T>;
  readonly close: () => void;
}

export function openLine(worker: Worker, told: (value: unknown) => void = () => undefined): Line {
  const waiting = new Map<number, { readonly resolve: (value: never) => void; readonly reject: (error: Error) => void }>();
  let next = 1;
  worker.addEventListener('message', ({ data }: MessageEvent<Answer>) => {
    if (data.id === undefined) return told(data);
    const asked = waiting.get(data.id);
    waiting.delete(data.id);
    if (data.failed === undefined) asked?.resolve(data.value as never);
    else asked?.reject(new Error(data.failed));
    return undefined;
  });
  worker.addEventListener('error', (event) => {
    for (const { reject } of waiting.values()) reject(new Error(event.message || 'the worker failed'));
    waiting.clear();
  });
  return {
    ask: (ask, ...args) =>
      new Promise((resolve, reject) => {
        waiting.set(next, { resolve, reject });
        worker.postMessage({ id: next, ask, args } satisfies Asked);
        next += 1;
      }),
    close: () => worker.terminate(),
  };
}
