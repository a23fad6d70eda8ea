import type { Desk, OfficeScreen } from './walk.ts';

/** A list with a fault of every kind that a list page tells of. */
const FAULTY = `joint;bolts;layout;size;grade;system;bolt length [mm];clamped thickness [mm];quux;lot
S1;8;2x4;M20;10.9;HV;75;4O;;L-1
S1;acht;2x4;M21;10.8;HV;75;40;;L-1
`;

/** Before anybody signs in: the first run, a list with faults, and what is typed. */
export const FIRST_SCREENS: readonly OfficeScreen[] = [
  { name: 'start-first', go: (desk) => desk.to('').then(() => desk.see('desk.no-drafts')) },
  { name: 'no-draft', go: (desk) => desk.to('/plan').then(() => desk.see('desk.none-text')) },
  {
    name: 'list',
    go: async (desk) => {
      await desk.to('');
      const buffer = Buffer.from(FAULTY);
      await desk.field('desk.choose').setInputFiles({ name: 'splices.csv', mimeType: 'text/csv', buffer });
      await desk.see('list.columns');
    },
  },
  {
    name: 'plan-faulty',
    go: async (desk) => {
      await desk.page.locator('main select').first().selectOption('en1090-torque');
      await desk.press('list.take');
      await desk.see('sheet.fix-first');
      await desk.planned();
      await desk.page.locator('main details summary').first().click();
    },
  },
  {
    name: 'joints-faulty',
    go: async (desk) => {
      await desk.page.locator('main details[open] a').first().click();
      await desk.page.locator('[role=gridcell][aria-invalid=true]').first().waitFor();
    },
  },
  {
    name: 'tool-typed',
    go: async (desk) => {
      await desk.to('/define/tools');
      await desk.field('define.new-tool').fill('W-1');
      await desk.press('define.add-tool');
      await desk.page.locator('main summary').click();
      await desk.press('define.chart-begin');
      await desk.page.getByRole('grid').first().waitFor();
      await desk.planned();
    },
  },
];

const planned = (path: string) => async (desk: Desk) => {
  await desk.to(path);
  await desk.page.getByRole('heading', { level: 1 }).waitFor();
  await desk.planned();
};

const PARTS = ['joints', 'job', 'people', 'lots', 'tools', 'batteries', 'members', 'files'] as const;

/** The demo's folder in hand: its plan, its joints, its parts, played in advance and compared. */
export const DRAFT_SCREENS: readonly OfficeScreen[] = [
  { name: 'plan', go: (desk) => planned('/plan')(desk).then(() => desk.see('sheet.fix-first')) },
  {
    name: 'plan-grouped',
    go: async (desk) => {
      await planned('/plan?group=tool')(desk);
      await desk.page.getByRole('table').scrollIntoViewIfNeeded();
    },
  },
  ...Object.entries({ joint: 'FB-S1', ring: 'TB-R1', flange: 'PH-F1', rounds: 'PH-F2' }).map(([name, tag]) => ({
    name,
    go: async (desk: Desk) => {
      await planned(`/plan/${tag}`)(desk);
      await desk.page.locator('main svg').first().waitFor();
      if (name === 'rounds') await desk.page.locator('main table').last().scrollIntoViewIfNeeded();
    },
  })),
  ...PARTS.map((part) => ({ name: `define-${part}`, go: planned(part === 'joints' ? '/define' : `/define/${part}`) })),
  { name: 'define-file', go: planned('/define/files/job.yaml') },
  { name: 'simulate', go: planned('/simulate') },
  {
    name: 'simulated',
    go: async (desk) => {
      await desk.press('play.play');
      await desk.page.locator('figure svg').first().waitFor({ timeout: 60_000 });
    },
  },
  {
    name: 'compare',
    go: async (desk) => {
      await planned('/compare')(desk);
      await desk.page.locator('main select').selectOption({ index: 1 });
      await desk.page.locator('main table').first().waitFor();
    },
  },
];
