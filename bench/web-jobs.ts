import type { Page } from 'playwright-core';
import type { OpenBrowser } from '../e2e/browser.ts';
import type { Yard } from '../e2e/yard.ts';
import { keyPairOf, openFold } from '../packages/record/src/index.ts';
import { memoryShelf, openDevice } from '../packages/sync/src/index.ts';

/** What lies on the phone's shelf, carried out of its browser and into it again. */
async function readShelf(page: Page): Promise<{ readonly secret: Uint8Array; readonly rows: readonly (readonly [string, Uint8Array])[] }> {
  const { secret, rows } = await page.evaluate(
    () =>
      new Promise<{ secret: number[]; rows: [string, number[]][] }>((resolve, reject) => {
        const opening = indexedDB.open('clampwright');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const db = opening.result;
          const read = db.transaction(['shelf', 'kept'], 'readonly');
          const [keys, values, identity] = [
            read.objectStore('shelf').getAllKeys(),
            read.objectStore('shelf').getAll(),
            read.objectStore('kept').get('identity'),
          ];
          read.oncomplete = () => {
            db.close();
            resolve({ secret: [...identity.result.secret], rows: keys.result.map((key, at) => [String(key), [...values.result[at]]]) });
          };
        };
      }),
  );
  return { secret: Uint8Array.from(secret), rows: rows.map(([key, bytes]) => [key, Uint8Array.from(bytes)] as const) };
}

async function writeShelf(page: Page, rows: readonly (readonly [string, Uint8Array])[]): Promise<void> {
  for (let from = 0; from < rows.length; from += 2000)
    await page.evaluate(
      (part) =>
        new Promise<void>((resolve, reject) => {
          const opening = indexedDB.open('clampwright');
          opening.onerror = () => reject(opening.error);
          opening.onsuccess = () => {
            const change = opening.result.transaction('shelf', 'readwrite');
            for (const [key, bytes] of part) change.objectStore('shelf').put(Uint8Array.from(bytes), key);
            change.oncomplete = () => {
              opening.result.close();
              resolve();
            };
          };
        }),
      rows.slice(from, from + 2000).map(([key, bytes]) => [key, [...bytes]] as const),
    );
}

/** Every bolt of every step of every joint of the job, told by another phone: so many entries are on the log at the end. */
export async function tellAll(yard: Yard, job: string): Promise<number> {
  const { device } = yard.office;
  const fold = openFold();
  for (const kept of await device.entries(job)) fold.add(kept);
  let told = 0;
  for (const id of fold.ids('joint')) {
    const slice = fold.state('joint', id).plan?.slice;
    for (const { step, settings } of slice?.steps ?? [])
      for (const bolt of slice!.sequence.flat()) {
        const set = settings.find(({ positions }) => positions.includes(bolt));
        await device.append(job, 'bolt-tightened', {
          joint: id,
          bolt,
          step,
          end: 'stall',
          ...(set ? { tool: set.tool, setting: set.setting } : {}),
        });
        told += 1;
      }
  }
  await yard.sync();
  return told;
}

/** Entries that wait on the phone itself: written by its own key on its own shelf, as its page would have, then put back. */
export async function queue(phone: OpenBrowser, yard: Yard, job: string, count: number): Promise<void> {
  const page = await phone.context.newPage();
  // a page of the same origin that opens no world, so that nothing else writes meanwhile
  await page.goto(`${yard.server.url}/verify`);
  const { secret, rows } = await readShelf(page);
  const shelf = memoryShelf();
  await shelf.write({ put: rows });
  const device = openDevice({ shelf, keys: keyPairOf(secret), now: () => new Date() });
  for (let n = 0; n < count; n += 1) await device.append(job, 'note-written', { text: `gust ${n}` });
  const before = new Map(rows.map(([key, bytes]) => [key, Buffer.from(bytes).toString('base64')]));
  const after = await shelf.scan('');
  await writeShelf(
    page,
    after.filter(([key, bytes]) => before.get(key) !== Buffer.from(bytes).toString('base64')),
  );
  await page.close();
}

/** Milliseconds from a press on “turn the drawing” until the drawing has been laid out anew, the median of so many. */
export async function turned(page: Page, runs: number): Promise<number> {
  const times = await page.evaluate(async (count) => {
    const button = [...document.querySelectorAll('button')].find(({ textContent }) => textContent?.startsWith('Turn the drawing'))!;
    const all: number[] = [];
    for (let run = 0; run < count; run += 1) {
      await new Promise(requestAnimationFrame);
      const begun = performance.now();
      button.click();
      // the change is in the document once React has rendered; reading a size lays it out
      await Promise.resolve();
      document.querySelector('figure svg')!.getBoundingClientRect();
      all.push(performance.now() - begun);
      await new Promise((resolve) => setTimeout(resolve, 50));
    }
    return all.sort((a, b) => a - b);
  }, runs);
  return times[Math.floor(times.length / 2)]!;
}
