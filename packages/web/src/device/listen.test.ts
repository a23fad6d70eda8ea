import { expect, test } from 'vitest';
import { sizesIn } from './listen.ts';

test('sizes are read whole, however the stream was cut, and comments are left out', async () => {
  const text = 'event: size\ndata: {"job":"j","size":4}\n\n: still here\n\nevent: size\ndata: {"job":"j","size":12}\n\n';
  for (const cut of [1, 7, 20, 33, 40, text.length]) {
    const bytes = new TextEncoder().encode(text);
    const stream = new ReadableStream<Uint8Array>({
      start(controller) {
        controller.enqueue(bytes.slice(0, cut));
        controller.enqueue(bytes.slice(cut));
        controller.close();
      },
    });
    const found: number[] = [];
    for await (const size of sizesIn(stream)) found.push(size);
    expect(found, `cut at ${cut}`).toEqual([4, 12]);
  }
});
