import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { handoverBytes, testBook, testSource } from '../../packages/record/src/test-handover.ts';
import { hold, openJoint, prepare } from '../phone.ts';
import type { Screen } from './walk.ts';

/** A device that belongs to no job yet: joining, verifying a file, practising. */
export const START: readonly Screen[] = [
  {
    name: 'join',
    go: async ({ to, see }) => {
      await to('/');
      await see('enrol.text');
    },
  },
  {
    name: 'join-refused',
    go: async ({ page, press, say }) => {
      await page.getByLabel(say('enrol.code')).fill('ABCD-EFGH');
      await press('enrol.join');
      await page.getByRole('alert').waitFor();
    },
  },
  {
    name: 'verify',
    go: async ({ press, see }) => {
      await press('enrol.verify');
      await see('verify.lead');
    },
  },
  {
    name: 'verified',
    go: async ({ page, press, folder, see }) => {
      const file = join(folder, 'splice.handover');
      writeFileSync(file, await handoverBytes(testSource(testBook())));
      await page.locator('input[type=file]').setInputFiles(file);
      await press('verify.run');
      await see('verify.yes-text');
      await page.getByRole('heading', { level: 2 }).first().scrollIntoViewIfNeeded();
    },
  },
  {
    name: 'not-verified',
    go: async ({ page, press, folder, see }) => {
      const file = join(folder, 'torn.handover');
      writeFileSync(file, (await handoverBytes(testSource(testBook()))).subarray(0, 900));
      await page.locator('input[type=file]').setInputFiles(file);
      await press('verify.run');
      await see('verify.no-text');
      await page.getByRole('heading', { level: 2 }).first().scrollIntoViewIfNeeded();
    },
  },
  {
    name: 'practice-begin',
    go: async ({ to, press, see }) => {
      await to('/');
      await press('enrol.practice');
      await see('practice.text');
    },
  },
  {
    name: 'practice-today',
    go: async ({ page, press }) => {
      await press('practice.begin');
      await page.getByText('FB-S1').first().waitFor();
    },
  },
  {
    name: 'scan-no-camera',
    go: async ({ press, see }) => {
      await press('today.scan');
      await see('scan.refused');
    },
  },
  {
    name: 'practice-before',
    go: async ({ page, press, say }) => {
      await press('today.find');
      await openJoint(page, 'FB-S1', say);
    },
  },
  {
    name: 'practice-tighten',
    go: async ({ page, to, say }) => {
      await to('/');
      await prepare(page, 'FB-S1', ['SK-B204'], say);
      await hold(page, say);
    },
  },
  {
    name: 'practice-settings',
    go: async ({ to, see }) => {
      await to('/settings');
      await see('practice.leave');
    },
  },
];
