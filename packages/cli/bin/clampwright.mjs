#!/usr/bin/env node
// The bundle is made by `npm run build`, which `npm ci` and `npm start` run.
import { existsSync } from 'node:fs';

const bundle = new URL('../dist/clampwright.mjs', import.meta.url);
if (!existsSync(bundle)) {
  console.error('clampwright is not set up yet: run "npm ci" in the checkout.');
  process.exit(2);
}
await import(bundle.href);
