// `npm run bench`: bundled like what ships, so that what is measured is what runs on site and not the translation of its modules.
import { build } from 'esbuild';
import { run } from './setup.mjs';

run('node', ['scripts/build.mjs']);
await build({
  entryPoints: ['bench/run.ts'],
  outfile: 'bench/dist/run.mjs',
  bundle: true,
  external: ['better-sqlite3', 'web-ifc', '@node-rs/argon2', 'pg-native'],
  platform: 'node',
  format: 'esm',
  target: 'node20',
  banner: { js: "import { createRequire as __createRequire } from 'node:module'; const require = __createRequire(import.meta.url);" },
  define: { 'process.env.NODE_ENV': '"production"' },
  logLevel: 'warning',
});
run('node', ['bench/dist/run.mjs', ...process.argv.slice(2)]);
