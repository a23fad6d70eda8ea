// Bundles the command line (with the pages it serves) into one file that starts in a blink, and beside it what a simulation runs on other cores.
import { spawnSync } from 'node:child_process';
import { rmSync } from 'node:fs';
import { build } from 'esbuild';
import { NODE_BUNDLE } from './node-bundle.mjs';

rmSync('packages/cli/dist', { recursive: true, force: true });
await build({
  ...NODE_BUNDLE,
  entryPoints: { clampwright: 'packages/cli/src/index.ts', 'simulate-worker': 'packages/cli/src/simulate-worker.ts' },
  outdir: 'packages/cli/dist',
  outExtension: { '.js': '.mjs' },
  // what only the server and the books need is loaded when it is called for
  splitting: true,
});

// The app, for browsers. Its practice plan is made from the demo, with the engine as it is.
const vite = [
  '--import',
  'tsx',
  'node_modules/vite/bin/vite.js',
  'build',
  'packages/web',
  '--configLoader',
  'native',
  '--logLevel',
  'warn',
];
const { status } = spawnSync('node', vite, { stdio: 'inherit' });
if (status !== 0) process.exit(status ?? 1);
