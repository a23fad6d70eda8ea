// `npm run screens`: pictures of the pages at phone, tablet and laptop size, light and dark, into docs/screens.
import { mkdirSync } from 'node:fs';
import { appScreens } from './app-screens.ts';
import { paperScreens } from './paper-screens.ts';
import { plannerScreens } from './planner-screens.ts';
import { yardScreens } from './yard-screens.ts';

mkdirSync('docs/screens', { recursive: true });
await plannerScreens();
await paperScreens('docs/screens');
await appScreens();
await yardScreens();
console.log('docs/screens is up to date');
