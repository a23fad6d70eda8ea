// `npm run bench:web`: the crew's screens in the browser. Lighthouse comes on demand, into a folder of its own: nothing else needs it.
import { existsSync } from 'node:fs';
import { BROWSER, debianPackages, install, run } from './setup.mjs';

const LIGHTHOUSE = 'node_modules/.lighthouse';

install();
run('node', ['scripts/build.mjs']);
if (!debianPackages(BROWSER)) process.exit(1);
if (!existsSync(`${LIGHTHOUSE}/node_modules/lighthouse`))
  run('npm', ['install', '--no-save', '--no-audit', '--no-fund', '--ignore-scripts', '--prefix', LIGHTHOUSE, 'lighthouse@12.2.3']);
run('node', ['--import', 'tsx', 'bench/web.ts', ...process.argv.slice(2)]);
