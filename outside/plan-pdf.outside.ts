import { describe, expect, test } from 'vitest';
import { planPdf } from '../packages/papers/src/out.ts';
import { testPlan } from '../packages/papers/src/test-plan.ts';
import { installedLetters, MADE } from './letters.ts';
import { readPdf } from './read-pdf.ts';

const plan = testPlan();
const organisation = { name: 'Skerrow Sound tidal yard', address: 'Pier 2' };
const bytes = await planPdf(plan, { letters: installedLetters(), made: MADE, organisation });
const pdf = readPdf(bytes);

describe('the plan on A4', () => {
  test('is a PDF whose structure qpdf accepts and whose every font is embedded', () => {
    expect(pdf.faults()).toBe('');
    expect(pdf.fonts().length).toBeGreaterThanOrEqual(2);
    expect(pdf.fonts().filter(({ embedded }) => !embedded)).toEqual([]);
  });

  test('claims PDF/A-2b in its metadata', () => {
    expect(pdf.metadata()).toMatch(/<pdfaid:part>2<\/pdfaid:part>\s*<pdfaid:conformance>B<\/pdfaid:conformance>/);
  });

  test('says on every page which of how many it is, and whose it is', () => {
    for (let page = 1; page <= pdf.pages; page += 1) {
      expect(pdf.text(page)).toContain(`page ${page} of ${pdf.pages}`);
      expect(pdf.text(page)).toContain(organisation.name);
    }
  });

  test('holds every joint with preload, setting and torque as the plan says them', () => {
    const text = pdf.text().replace(/\s+/g, ' ');
    for (const { tag, subgroups } of plan.joints) {
      expect(text).toContain(tag);
      for (const { tightening } of subgroups)
        for (const { setting } of tightening?.steps ?? []) if (setting) expect(text).toContain(setting.text.split(',')[0]);
    }
    expect(text).toContain('247 kN');
    expect(text).toContain('F_p,C = 0.7 · f_ub · A_s');
  });

  test('has bookmarks: the plan, each joint, the annex', () => {
    expect(pdf.outline()).toEqual([
      'Bolting plan',
      ...plan.joints.map(({ tag, title }) => `${tag} ${title}`),
      'Annex: formulas and sources',
    ]);
  });

  test('is the same, byte for byte, when it is made again', async () => {
    expect(Buffer.compare(await planPdf(plan, { letters: installedLetters(), made: MADE, organisation }), bytes)).toBe(0);
  });
});
