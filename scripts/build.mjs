// Bundles the command line (with the pages it serves) into one file that starts in a blink, and beside it what a simulation runs on other cores.
import { build } from 'esbuild';

await build({
  entryPoints: { clampwright: 'packages/cli/src/index.ts', 'simulate-worker': 'packages/cli/src/simulate-worker.ts' },
  outdir: 'packages/cli/dist',
  outExtension: { '.js': '.mjs' },
  bundle: true,
  platform: 'node',
  format: 'esm',
  target: 'node20',
  jsx: 'automatic',
  // dependencies written as CommonJS ask for these names
  banner: { js: "import { createRequire as __createRequire } from 'node:module'; const require = __createRequire(import.meta.url);" },
  define: { 'process.env.NODE_ENV': '"production"' },
  logLevel: 'warning',
});
