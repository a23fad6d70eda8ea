import { describe, expect, test } from 'vitest';
import { cardCode, jointCode, shortCode } from '../packages/papers/src/card-pdf/codes.ts';
import { cardsPdf, kitPdf, tagsPdf } from '../packages/papers/src/out.ts';
import { testJob, testPlan } from '../packages/papers/src/test-plan.ts';
import { hashOf, issuePlan, utf8 } from '../packages/record/src/index.ts';
import { jointId } from '../packages/record/src/test-book.ts';
import { codeOn } from './code-on.ts';
import { installedLetters, MADE } from './letters.ts';
import { type ReadPdf, readPdf } from './read-pdf.ts';

const job = testJob();
const plan = testPlan();
const options = { letters: installedLetters(), made: MADE };
const going = plan.joints.filter(({ verdict }) => verdict !== 'stop');
const joined = (text: string) => text.replace(/\s+/g, ' ');

/** Pages of a joint: from the one where it begins to the next. */
function pagesOf(pdf: ReadPdf, tag: string): string {
  return Array.from({ length: pdf.pages }, (_, i) => pdf.text(i + 1))
    .filter((text) => text.includes(tag))
    .join('\n');
}

describe.each(['A5', 'A6', 'A4'] as const)('bolting cards on %s', (paper) => {
  let pdf: ReadPdf;
  test('are a PDF that qpdf accepts, every font embedded', async () => {
    pdf = readPdf(await cardsPdf(plan, { ...options, paper }));
    expect(pdf.faults()).toBe('');
    expect(pdf.fonts().every(({ embedded }) => embedded)).toBe(true);
  });

  test('say datum, every setting, how each step ends, and have a number for every bolt to tick', () => {
    for (const joint of going) {
      const text = joined(pagesOf(pdf, joint.tag));
      expect(text).toContain(`Bolt 1: ${joint.datum!.boltOne}.`);
      for (const { tightening } of joint.subgroups)
        for (const { setting } of tightening?.steps ?? []) if (setting) expect(text).toContain(setting.text);
      const words = new Set(text.split(' '));
      for (let bolt = 1; bolt <= joint.boltCount; bolt += 1) expect(words.has(String(bolt)), `${joint.tag} bolt ${bolt}`).toBe(true);
      for (const field of ['Operator signs', 'Inspector signs', 'Daily tool check', 'Something else happened'])
        expect(text).toContain(field);
      expect(text).toContain(shortCode(joint));
    }
  });

  test('have no setting for a joint that stops', () => {
    const text = joined(pagesOf(pdf, 'PH-F4'));
    expect(text).toContain('STOP: do not tighten');
    expect(text).not.toMatch(/gear \d/);
  });

  test('carry the code of the very card that an issue of the plan keeps', () => {
    expect(codeOn(pdf.picture(1, paper === 'A4' ? 200 : 150))).toBe(cardCode(going[0]!));
    const issued = issuePlan(job, plan, [], { number: 'P-1', jointId: () => jointId(1) }).cards.find(({ slice }) => slice.tag === going[0]!.tag)!;
    expect(cardCode(going[0]!)).toBe(`CLAMPWRIGHT:CARD:${issued.slice.card.toUpperCase()}`);
    expect(hashOf(utf8(JSON.stringify(going[0])))).toBe(issued.slice.card);
  });
});

test('a tag holds a code that stays the same in every issue of the plan', async () => {
  const pdf = readPdf(await tagsPdf(plan, { ...options, paper: 'roll' }));
  expect(pdf.pages).toBe(plan.joints.length);
  expect(pdf.faults()).toBe('');
  for (const [at, joint] of plan.joints.entries()) {
    expect(codeOn(pdf.picture(at + 1, 200))).toBe(jointCode(plan.job, joint));
    expect(pdf.text(at + 1)).toContain(joint.tag);
  }
  const changed = { ...going[0]!, title: 'renamed', subgroups: [] };
  expect(jointCode(plan.job, changed)).toBe(jointCode(plan.job, going[0]!));
  expect(cardCode(changed)).not.toBe(cardCode(going[0]!));
});

test('the kit list counts the bolts of each lift', async () => {
  const text = joined(readPdf(await kitPdf(plan, options)).text());
  expect(text).toMatch(/4 bolt: HV M24 × 95 mm, 10\.9, lot K2/);
  expect(text).toMatch(/72 bolt: HV M36 × 210 mm/);
});
