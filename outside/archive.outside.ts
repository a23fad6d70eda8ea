import { describe, expect, test } from 'vitest';
import { cardsPdf, kitPdf, planPdf, reportPdf, reportSourceOf, tagsPdf } from '../packages/papers/src/out.ts';
import { toldBook } from '../packages/papers/src/test-log.ts';
import { testPlan } from '../packages/papers/src/test-plan.ts';
import { TEST_LOG, testSource } from '../packages/record/src/test-handover.ts';
import { loadWords } from '../packages/words/src/index.ts';
import { installedLetters, MADE } from './letters.ts';
import { readPdf } from './read-pdf.ts';

// What ISO 19005-2 (level B) asks of a file and can be seen without a validator of it: none is in Debian.

type Dictionary = Readonly<Record<string, unknown>>;
const plan = testPlan();
const languages = [await loadWords('de'), await loadWords('pl')] as const;
const options = { letters: installedLetters(), made: MADE, languages, organisation: { name: 'Skerrow Sound tidal yard' } };
const PAPERS: Readonly<Record<string, () => Promise<Uint8Array>>> = {
  plan: () => planPdf(plan, options),
  cards: () => cardsPdf(plan, { ...options, paper: 'A6' }),
  tags: () => tagsPdf(plan, { ...options, paper: 'sheet' }),
  kit: () => kitPdf(plan, options),
  report: async () => reportPdf(await reportSourceOf(testSource(toldBook()), TEST_LOG, '0.1.0'), options),
};

/** Every dictionary of the file, however deep. */
function dictionaries(value: unknown): Dictionary[] {
  if (Array.isArray(value)) return value.flatMap(dictionaries);
  if (typeof value !== 'object' || value === null) return [];
  return [value as Dictionary, ...Object.values(value).flatMap(dictionaries)];
}

describe.each(Object.keys(PAPERS))('%s, to be kept for ever', (name) => {
  test('claims PDF/A-2b, and nothing that it may not hold is in it', async () => {
    const bytes = await PAPERS[name]!();
    const pdf = readPdf(bytes);
    expect(pdf.faults()).toBe('');
    const head = Buffer.from(bytes.subarray(0, 16));
    expect(head.toString('latin1')).toMatch(/^%PDF-1\.7\s%/);
    // four bytes above 127 in the second line: whoever copies it as text is warned
    expect([...head.subarray(10, 14)].every((byte) => byte > 127)).toBe(true);

    const objects = pdf.objects();
    const all = dictionaries(objects);
    const trailer = (objects.trailer as { value: Dictionary }).value;
    expect(trailer['/Encrypt']).toBeUndefined();
    expect(trailer['/ID']).toHaveLength(2);

    const catalog = all.find((one) => one['/Type'] === '/Catalog')!;
    expect(catalog['/Lang']).toBe('u:de');
    for (const forbidden of ['/AA', '/OpenAction', '/AcroForm', '/OCProperties', '/Requirements'])
      expect(catalog[forbidden], forbidden).toBeUndefined();
    const metadata = pdf.metadata();
    expect(metadata).toContain('<pdfaid:part>2</pdfaid:part>');
    expect(metadata).toContain('<pdfaid:conformance>B</pdfaid:conformance>');

    const intents = all.filter((one) => one['/Type'] === '/OutputIntent');
    expect(intents).toHaveLength(1);
    expect(intents[0]).toMatchObject({ '/S': '/GTS_PDFA1' });
    const profile = objects[`obj:${String(intents[0]!['/DestOutputProfile'])}`] as { stream: { dict: Dictionary } };
    expect(profile.stream.dict['/N']).toBe(3);

    // every letter is in the file, with what turns it back into text
    const descriptors = all.filter((one) => one['/Type'] === '/FontDescriptor');
    expect(descriptors.length).toBeGreaterThan(1);
    for (const one of descriptors) expect(['/FontFile', '/FontFile2', '/FontFile3'].filter((key) => key in one)).toHaveLength(1);
    for (const one of all.filter((font) => font['/Subtype'] === '/Type0')) expect(one['/ToUnicode']).toBeDefined();

    for (const one of all) {
      for (const forbidden of ['/JavaScript', '/EmbeddedFiles', '/AlternatePresentations'])
        expect(one[forbidden], forbidden).toBeUndefined();
      expect([one['/S'] === '/JavaScript', one['/S'] === '/Launch', '/JS' in one, '/EF' in one]).toEqual([false, false, false, false]);
      // nothing shines through: no blend mode, no soft mask, no opacity
      expect(['/SMask' in one && one['/SMask'] !== '/None', '/CA' in one && one['/CA'] !== 1, '/ca' in one && one['/ca'] !== 1]).toEqual([
        false,
        false,
        false,
      ]);
      if (one['/Type'] === '/Page') expect(one['/Group']).toBeUndefined();
    }
    // a filter a reader of the archive need not know, or one that loses
    expect(all.some((one) => JSON.stringify(one['/Filter'] ?? '').includes('LZW'))).toBe(false);
  });
});
