// `npm run torture`: everything that may go wrong, by seed and bounded in time; `-- --quick` takes a true sample of each.
import { openCount } from './count.ts';
import { days } from './days.ts';
import { faults } from './faults.ts';
import { fuzz } from './fuzz.ts';
import { kills } from './kills.ts';
import { power } from './power.ts';
import { replica } from './replica.ts';
import { tamper } from './tamper.ts';

const quick = process.argv.includes('--quick');
const count = openCount();
const began = Date.now();
const within = (seconds: number) => Date.now() + seconds * 1000;

// one after the other: days and tampering keep the event loop busy, and a fault would take a slow answer for none
await faults(count);
await days(count, quick ? 12 : 1000, within(quick ? 5 : 1200));
await fuzz(count, quick ? 1 : 600);
await tamper(count, quick ? 400 : 12_000);
if (!quick) await replica(count);
await power(count, quick ? 16 : 500);
await kills(count, quick ? 6 : 300, 1, within(quick ? 8 : 1500));

console.log(`\n${((Date.now() - began) / 1000).toFixed(0)} s`);
console.log(`${count.counts.passed} passed, ${count.counts.failed} failed`);
process.exit(count.counts.failed === 0 ? 0 : 1);
