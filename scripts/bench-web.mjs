// `npm run bench:web [part…]`: the pages in the browser. Lighthouse comes on demand, into a folder of its own: nothing else needs it.
import { existsSync } from 'node:fs';
import { build } from 'esbuild';
import { NODE_BUNDLE } from './node-bundle.mjs';
import { BROWSER, debianPackages, install, run } from './setup.mjs';

const LIGHTHOUSE = 'node_modules/.lighthouse';

install();
run('node', ['scripts/build.mjs']);
if (!debianPackages(BROWSER)) process.exit(1);
const parts = process.argv.slice(2);
if ((parts.length === 0 || parts.includes('lighthouse')) && !existsSync(`${LIGHTHOUSE}/node_modules/lighthouse`))
  run('npm', ['install', '--no-save', '--no-audit', '--no-fund', '--ignore-scripts', '--prefix', LIGHTHOUSE, 'lighthouse@12.2.3']);
// bundled, so that a function that is handed to the page calls no helper which the page does not have
await build({
  ...NODE_BUNDLE,
  external: [...NODE_BUNDLE.external, 'playwright-core'],
  entryPoints: ['bench/web.ts'],
  outfile: 'bench/dist/web.mjs',
});
run('node', ['bench/dist/web.mjs', ...parts]);
