import { cpSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

const PARTS = [
  'packages/cli/bin',
  'packages/cli/dist',
  'packages/cli/templates',
  'packages/cli/package.json',
  'packages/web/dist',
  'package.json',
];

/** The product as it ships, in a folder of its own, so that it can be replaced. */
export function ownProduct(folder: string): string {
  const product = join(folder, 'product');
  for (const part of PARTS) cpSync(part, join(product, part), { recursive: true });
  symlinkSync(join(process.cwd(), 'node_modules'), join(product, 'node_modules'));
  return product;
}

/** The next version lies in its place: another page (`meta name=version`), and another list of what is kept. */
export function makeNewer(product: string): void {
  const [index, worker] = ['index.html', 'sw.js'].map((file) => join(product, 'packages/web/dist', file)) as [string, string];
  writeFileSync(index, readFileSync(index, 'utf8').replace('<head>', '<head><meta name="version" content="next" />'));
  const precache = readFileSync(worker, 'utf8');
  const next = precache.replace(
    /(url:"index\.html",revision:")[^"]*|(revision:")[^"]*(",url:"index\.html")/,
    (_, a, b, c) => `${a ?? b}next${c ?? ''}`,
  );
  if (next === precache) throw new Error('the worker’s list does not name the page');
  writeFileSync(worker, next);
}
