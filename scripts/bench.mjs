// `npm run bench`: bundled like what ships, so that what is measured is what runs on site and not the translation of its modules.
import { build } from 'esbuild';
import { NODE_BUNDLE } from './node-bundle.mjs';
import { run } from './setup.mjs';

run('node', ['scripts/build.mjs']);
await build({
  ...NODE_BUNDLE,
  external: [...NODE_BUNDLE.external, 'playwright-core'],
  entryPoints: ['bench/run.ts'],
  outfile: 'bench/dist/run.mjs',
});
run('node', ['bench/dist/run.mjs', ...process.argv.slice(2)]);
