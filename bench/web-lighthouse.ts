import { createRequire } from 'node:module';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

const CATEGORIES = ['performance', 'accessibility', 'best-practices'] as const;
type Scores = { -readonly [C in (typeof CATEGORIES)[number]]: number };
/** What of Lighthouse is used; it is installed beside the product, not in it. */
type Lighthouse = (
  url: string,
  flags: object,
) => Promise<{ readonly lhr: { readonly categories: Readonly<Record<string, { readonly score: number | null }>> } } | undefined>;

/** Scores of one page on the phone profile as it is shipped, the median of so many runs each: the first visit over a slow line, with the job already on the device. The browser listens at `port`. */
export async function lighthouseScores(url: string, port: number, runs: number): Promise<Scores> {
  const from = createRequire(pathToFileURL(join(process.cwd(), 'node_modules/.lighthouse/package.json')));
  const { default: lighthouse } = (await import(pathToFileURL(from.resolve('lighthouse')).href)) as { default: Lighthouse };
  const found = Object.fromEntries(CATEGORIES.map((one) => [one, [] as number[]]));
  for (let run = 0; run < runs; run += 1) {
    const result = await lighthouse(url, { port, onlyCategories: [...CATEGORIES], logLevel: 'error' });
    for (const category of CATEGORIES) found[category]!.push(Math.round(100 * (result?.lhr.categories[category]?.score ?? 0)));
  }
  const median = (category: string) => found[category]!.sort((a, b) => a - b)[Math.floor(runs / 2)]!;
  return Object.fromEntries(CATEGORIES.map((one) => [one, median(one)])) as Scores;
}
