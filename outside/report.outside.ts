import { describe, expect, test } from 'vitest';
import { reportPdf, reportSourceOf } from '../packages/papers/src/out.ts';
import { toldBook, toldPlan } from '../packages/papers/src/test-log.ts';
import { bytesSource, readReport, verifyHandover } from '../packages/record/src/index.ts';
import { handoverBytes, TEST_LOG, testSource } from '../packages/record/src/test-handover.ts';
import { codeOn } from './code-on.ts';
import { installedLetters, MADE } from './letters.ts';
import { readPdf } from './read-pdf.ts';

const book = toldBook();
const source = await reportSourceOf(testSource(book), TEST_LOG, '0.1.0');
const bytes = await reportPdf(source, { letters: installedLetters(), made: MADE, organisation: { name: 'Skerrow Sound tidal yard' } });
const pdf = readPdf(bytes);
const pages = Array.from({ length: pdf.pages }, (_, i) => pdf.text(i + 1));
const pageOf = (heading: string) => pages.findIndex((text) => new RegExp(`^\\s*${heading}\\s*$`, 'm').test(text));

describe('the report', () => {
  test('is a PDF whose structure qpdf accepts, whose every font is embedded, and which claims PDF/A-2b', () => {
    expect(pdf.faults()).toBe('');
    expect(pdf.fonts().map(({ name }) => name.split('+')[1])).toEqual(
      expect.arrayContaining(['DejaVuSansCondensed', 'DejaVuSansCondensed-Bold', 'DejaVuSansMono']),
    );
    expect(pdf.fonts().every(({ embedded }) => embedded)).toBe(true);
    expect(pdf.metadata()).toContain('<pdfaid:part>2</pdfaid:part>');
  });

  test('keeps what is open on its first page, and how far every joint is', () => {
    expect(pages[0]).toContain('Work stopped by wind; bolts left open.');
    expect(pages[0]).toMatch(/FB-S1\s+P-7\s+8 \/ 8/);
    expect(pages[0]).toMatch(/TB-R1\s+P-7\s+51 \/ 72\s+not signed/);
  });

  test('has a row for every time a bolt was tightened, with setting and person, as the entries say', () => {
    const text = pages.join('\n');
    const rows = book.entries.filter(({ entry }) => entry.kind === 'bolt-tightened').length - 3; // bolt 3 began again with a new assembly
    expect(text.match(/^\s*\d+\s+(snug|first step|second step)\s.*Tobias Quell\s+2026-11-25/gm)).toHaveLength(rows);
    for (const { subgroups } of toldPlan().joints)
      for (const { tightening } of subgroups)
        for (const { setting } of tightening!.steps) if (setting) expect(text).toContain(`${setting.tool}, ${setting.text}`);
  });

  test('tells every entry in its annex, by number, text and hash', () => {
    const annex = pages.slice(pageOf('Annex: every entry')).join('\n');
    for (const [index, { hash }] of book.entries.entries())
      expect(annex).toMatch(new RegExp(`^\\s*${index}\\s+2026-11-25 12:00.*${hash.slice(0, 12)}$`, 'm'));
  });

  test('names tools with certificate, people, signatures, and what was agreed and settled', () => {
    const text = pages.join('\n');
    for (const told of [
      'C-SK-1',
      'Maren Hollow',
      'bolting technician, 2027-05-31',
      'Washers of another make at bolts 5 to 8',
      'new assembly tightened',
    ])
      expect(text).toContain(told);
  });

  test('ends with the root, the checkpoint, and a code that holds the checkpoint', async () => {
    const proof = pages.at(-1)!;
    const verified = await verifyHandover(bytesSource(await handoverBytes(testSource(book))));
    if (!verified.ok) throw new Error(verified.fault.reason.code);
    expect(proof).toContain(verified.value.root);
    for (const line of verified.value.checkpoint.trimEnd().split('\n')) expect(proof).toContain(line);
    expect(codeOn(pdf.picture(pdf.pages, 150))).toBe(verified.value.checkpoint);
    expect(proof).toMatch(/phone of the crew\s+d-\w+\s+241\s+239\s+1/);
  });

  test('goes into the handover file, is verified with it, and comes out as it went in', async () => {
    const file = bytesSource(await handoverBytes(testSource(book, { report: bytes })));
    const verified = await verifyHandover(file);
    expect(verified).toMatchObject({ ok: true, value: { report: true } });
    expect(Buffer.compare((await readReport(file))!, bytes)).toBe(0);
  });

  test('is the same, byte for byte, when it is made again', async () => {
    const again = await reportPdf(source, { letters: installedLetters(), made: MADE, organisation: { name: 'Skerrow Sound tidal yard' } });
    expect(Buffer.compare(again, bytes)).toBe(0);
  });
});
