// Bundles the command line (with the pages it serves) into one file that starts in a blink, and beside it what a simulation runs on other cores.
import { rmSync } from 'node:fs';
import { build } from 'esbuild';

rmSync('packages/cli/dist', { recursive: true, force: true });
await build({
  entryPoints: { clampwright: 'packages/cli/src/index.ts', 'simulate-worker': 'packages/cli/src/simulate-worker.ts' },
  outdir: 'packages/cli/dist',
  outExtension: { '.js': '.mjs' },
  bundle: true,
  // what only the server and the books need is loaded when it is called for
  splitting: true,
  external: ['better-sqlite3', 'web-ifc', '@node-rs/argon2', 'pg-native', 'pdfkit'],
  platform: 'node',
  format: 'esm',
  target: 'node20',
  jsx: 'automatic',
  // dependencies written as CommonJS ask for these names
  banner: { js: "import { createRequire as __createRequire } from 'node:module'; const require = __createRequire(import.meta.url);" },
  define: { 'process.env.NODE_ENV': '"production"' },
  logLevel: 'warning',
});
