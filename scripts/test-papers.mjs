// `npm run test:papers`: printed papers and spreadsheets, read back by poppler, qpdf and LibreOffice.
import { finish, tests } from './counted.mjs';
import { debianPackages, install, PAPERS, run } from './setup.mjs';

install();
run('node', ['scripts/build.mjs']);
if (debianPackages(PAPERS)) tests('papers, by readers from outside', ['--config', 'outside/vitest.config.ts']);
finish();
