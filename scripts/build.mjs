// Bundles the command line (with the pages it serves) into one file that starts in a blink.
import { build } from 'esbuild';

await build({
  entryPoints: ['packages/cli/src/index.ts'],
  outfile: 'packages/cli/dist/clampwright.mjs',
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
