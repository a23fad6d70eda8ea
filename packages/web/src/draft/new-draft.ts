import { utf8 } from '@clampwright/record';
import type { Draft, Files } from './draft.ts';

const id = () => crypto.randomUUID();
const now = () => new Date();

/** A draft of files that lie ready. */
export const draftOf = (name: string, files: Files): Draft => ({ id: id(), name, demo: false, changed: now().toISOString(), files });

/** An empty job: what every job must say, and nothing else. */
export const emptyDraft = (name: string, site: string): Draft =>
  draftOf(
    name,
    new Map([
      ['job.yaml', jobYaml(name, site)],
      ['joints.csv', utf8(HEADINGS)],
      ['tools.yaml', utf8(TOOLS)],
    ]),
  );

/** The columns of a new list; whoever needs others adds them. */
const HEADINGS =
  'joint,description,rule set,layout,bolts,size,grade,system,bolt length [mm],clamped thickness [mm],lot,bolt 1,direction,seen from,tools\n';
const TOOLS = '# A chart belongs to one serial number and one certificate.\ntools: []\n';

const jobYaml = (title: string, site: string): Uint8Array =>
  utf8(`title: ${JSON.stringify(title)}
site: ${JSON.stringify(site)}
work-date: ${civilToday()} # certificates are judged on this day
units: metric
conditions: { wet: false, at-height: false }
people: []
lots: []
`);

/** Today where this browser is. */
function civilToday(): string {
  const day = now();
  return [day.getFullYear(), day.getMonth() + 1, day.getDate()].map((part) => String(part).padStart(2, '0')).join('-');
}

/** The demo yard as it ships, whatever somebody did to it before. */
export async function demoDraft(): Promise<Draft> {
  const { default: files } = await import('virtual:demo-folder');
  const bytes = (base64: string) => Uint8Array.from(atob(base64), (sign) => sign.charCodeAt(0));
  return {
    id: 'demo',
    name: 'Skerrow Sound',
    demo: true,
    changed: now().toISOString(),
    files: new Map(Object.entries(files).map(([name, base64]) => [name, bytes(base64)])),
  };
}
