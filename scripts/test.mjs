// `npm test`: sets up what is missing, then types, lint, unit and property tests, and the browser flows.
import { check, finish, tests } from './counted.mjs';
import { BROWSER, debianPackages, install, run } from './setup.mjs';

install();
run('node', ['scripts/build.mjs']);
check('types', 'node', ['scripts/types.mjs']);
check('lint: biome', 'node_modules/.bin/biome', ['check', '--error-on-warnings', '.']);
check('lint: oxlint, type-aware', 'node_modules/.bin/oxlint', [
  '--type-aware',
  '--deny-warnings',
  'packages',
  'e2e',
  'bench',
  'torture',
  'outside',
]);
check('unused code', 'node_modules/.bin/knip', []);
tests('unit', []);
// two flows; `npm run test:web` has them all
if (debianPackages(BROWSER)) tests('browser flows', ['--config', 'e2e/vitest.config.ts', 'verify.flow', 'plan.flow']);
finish();
