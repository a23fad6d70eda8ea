import { chooseFolder } from '../desk.ts';
import type { OfficeScreen } from './walk.ts';

const HIRED = {
  'store.field-serial': 'HT-77',
  'store.field-name': 'battery wrench',
  'store.field-repeatability': '4 %',
  'store.field-number': 'LAB-2210',
  'store.field-certificate-serial': 'HT-78',
  'store.field-laboratory': 'Holm calibration',
  'store.field-reference': 'TT-500 no. 12',
  'store.field-adapter': '3/4"',
  'store.field-calibrated': '2026-10-01',
  'store.field-due': '2099-10-01',
  'store.field-uncertainty': '1 %',
} as const;
const CHART = (cell: string) => ({
  name: 'chart.csv',
  mimeType: 'text/csv',
  buffer: Buffer.from(`gear [N·m],1,2,3\n1,100,120,${cell}\n2,200,230,260\n`),
});

/** Into the job of the yard, with the demo's folder as the draft in hand. */
export const SIGNED_IN_SCREENS: readonly OfficeScreen[] = [
  {
    name: 'signed-out',
    go: async (desk) => {
      await desk.to('/watch');
      await desk.see('office.password');
    },
  },
  {
    name: 'settings',
    go: async (desk) => {
      await desk.to('/settings');
      await desk.field('office.name').fill('planner');
      await desk.field('office.password').fill(desk.password);
      await desk.press('office.sign-in');
      await desk.see('set.accounts');
    },
  },
  {
    name: 'start',
    go: async (desk) => {
      await desk.to('');
      await desk.press('office.take-job');
      await desk.see('office.work-on');
    },
  },
  {
    name: 'people',
    go: async (desk) => {
      await desk.to('/people');
      await desk.page
        .getByRole('button', { name: /Ines Dahl$/ })
        .last()
        .click();
    },
  },
  {
    name: 'settings-whole',
    go: async (desk) => {
      await desk.to('');
      await chooseFolder(desk.field('desk.choose'));
      await desk.see('sheet.fix-first');
      await desk.to('/settings');
      await desk.see('set.organisation');
    },
  },
];

/** The job under way: issued again, its papers, its tools, its board, its handover. */
export const YARD_SCREENS: readonly OfficeScreen[] = [
  {
    name: 'issue',
    go: async (desk) => {
      await desk.to('/issue');
      await desk.planned();
      await desk.see('issue.freeze');
    },
  },
  {
    name: 'issued',
    go: async (desk) => {
      for (const field of await desk.field('issue.approved-by').all()) await field.fill('engineer of record');
      await desk.press('office.issue');
      await desk.see('issue.print');
    },
  },
  { name: 'papers', go: (desk) => desk.to('/papers').then(() => desk.see('office.papers-text')) },
  { name: 'tools', go: (desk) => desk.to('/tools').then(() => desk.see('store.due-file')) },
  { name: 'tool', go: (desk) => desk.to('/tools/SK-B204').then(() => desk.page.locator('main figure svg').first().waitFor()) },
  {
    name: 'hire',
    go: async (desk) => {
      await desk.to('/tools');
      for (const name of ['Ewa Lind', 'Tom Brae']) await desk.press('store.take-person', { name });
      await desk.to('/tools/hire');
      for (const [key, text] of Object.entries(HIRED)) await desk.field(key as keyof typeof HIRED).fill(text);
      await desk.field('define.chart-file').setInputFiles(CHART('1l0'));
      await desk.page.locator('[role=gridcell][aria-invalid=true]').first().waitFor();
    },
  },
  {
    name: 'hire-read-back',
    go: async (desk) => {
      await desk.field('define.chart-file').setInputFiles(CHART('140'));
      await desk.field('store.field-certificate-serial').fill('HT-77');
      await desk.field('store.field-photo').setInputFiles('packages/web/public/mark-192.png');
      await desk.see('store.photo-taken');
      await desk.field('store.typed-person').selectOption({ label: 'Ewa Lind' });
      await desk.press('pick.person');
      await desk.field('store.pin-of', { name: 'Ewa Lind' }).fill('2468');
      await desk.page.keyboard.press('Enter');
      await desk.see('store.other-person');
      await desk.press('store.typed-do');
      await desk.see('store.second');
    },
  },
  { name: 'watch', go: (desk) => desk.to('/watch').then(() => desk.see('live.key')) },
  { name: 'handover', go: (desk) => desk.to('/handover').then(() => desk.see('over.complete')) },
  {
    name: 'handover-written',
    go: async (desk) => {
      await desk.press('office.handover-get');
      await desk.see('over.save');
    },
  },
  { name: 'not-found', go: (desk) => desk.to('/nowhere').then(() => desk.see('app.not-found')) },
];
