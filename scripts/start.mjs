// `npm start`: sets up what is missing, plans the demo job and serves it at the printed address.
import { install, run } from './setup.mjs';

install();
run('node', ['scripts/build.mjs']);
run('node', ['packages/cli/bin/clampwright.mjs', 'show', 'demo', ...process.argv.slice(2)]);
