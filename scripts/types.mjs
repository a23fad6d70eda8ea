// Type-checks every package against its own tsconfig (core and words without DOM or Node types), then the tests.
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync } from 'node:fs';

const projects = readdirSync('packages')
  .map((name) => `packages/${name}/tsconfig.json`)
  .filter((path) => existsSync(path));
let failed = 0;
for (const project of [...projects, 'tsconfig.json']) {
  const { status } = spawnSync('node_modules/.bin/tsc', ['-p', project], { stdio: 'inherit' });
  if (status !== 0) failed += 1;
}
console.log(failed === 0 ? `types: ${projects.length + 1} projects, no error` : `types: ${failed} project(s) with errors`);
process.exit(failed === 0 ? 0 : 1);
