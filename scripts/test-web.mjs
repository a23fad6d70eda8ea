// `npm run test:web`: every browser flow, on the built app and the real server.
import { finish, tests } from './counted.mjs';
import { BROWSER, debianPackages, install, run } from './setup.mjs';

install();
run('node', ['scripts/build.mjs']);
if (debianPackages(BROWSER)) tests('browser flows', ['--config', 'e2e/vitest.config.ts']);
finish();
