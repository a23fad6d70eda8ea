// `npm run screens`: pictures of the screens at phone, tablet and laptop size, light and dark, into docs/screens.
// `npm run screens -- app`: only the crew's; `npm run screens -- app hold-point`: only those with this in their name.
import { mkdirSync } from 'node:fs';
import { crewPictures } from './crew-pictures.ts';
import { officePictures } from './office-pictures.ts';
import { paperPictures } from './paper-pictures.ts';

const PARTS: Readonly<Record<string, (wanted?: string) => Promise<void>>> = {
  office: officePictures,
  paper: () => paperPictures('docs/screens'),
  app: crewPictures,
};
const [part, wanted] = process.argv.slice(2);
if (part !== undefined && !(part in PARTS)) throw new Error(`one of ${Object.keys(PARTS).join(', ')}, not ${part}`);

mkdirSync('docs/screens', { recursive: true });
for (const [name, shoot] of Object.entries(PARTS)) if (part === undefined || part === name) await shoot(wanted);
console.log('docs/screens is up to date');
