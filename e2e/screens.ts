// `npm run screens`: pictures of the pages at phone, tablet and laptop size, light and dark, into docs/screens.
// `npm run screens -- app`: only the crew's; `npm run screens -- app hold-point`: only those with this in their name.
import { mkdirSync } from 'node:fs';
import { appScreens } from './app-screens.ts';
import { paperScreens } from './paper-screens.ts';
import { plannerScreens } from './planner-screens.ts';
import { yardScreens } from './yard-screens.ts';

const PARTS: Readonly<Record<string, (wanted?: string) => Promise<void>>> = {
  planner: () => plannerScreens(),
  paper: () => paperScreens('docs/screens'),
  app: appScreens,
  yard: () => yardScreens(),
};
const [part, wanted] = process.argv.slice(2);
if (part !== undefined && !(part in PARTS)) throw new Error(`one of ${Object.keys(PARTS).join(', ')}, not ${part}`);

mkdirSync('docs/screens', { recursive: true });
for (const [name, shoot] of Object.entries(PARTS)) if (part === undefined || part === name) await shoot(wanted);
console.log('docs/screens is up to date');
