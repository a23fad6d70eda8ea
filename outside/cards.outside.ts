import { describe, expect, test } from 'vitest';
import { cardCode, jointCode, shortCode } from '../packages/papers/src/card-pdf/codes.ts';
import { cardsPdf, kitPdf, planPdf, reportPdf, reportSourceOf, tagsPdf } from '../packages/papers/src/out.ts';
import { toldBook } from '../packages/papers/src/test-log.ts';
import { testJob, testPlan } from '../packages/papers/src/test-plan.ts';
import { hashOf, issuePlan, utf8 } from '../packages/record/src/index.ts';
import { jointId } from '../packages/record/src/test-book.ts';
import { TEST_LOG, testSource } from '../packages/record/src/test-handover.ts';
import { ENGLISH_WORDS, LANGUAGES, type Language, loadWords } from '../packages/words/src/index.ts';
import { codeOn } from './code-on.ts';
import { installedLetters, MADE } from './letters.ts';
import { type ReadPdf, readPdf } from './read-pdf.ts';

const job = testJob();
const plan = testPlan();
const options = { letters: installedLetters(), made: MADE };
const going = plan.joints.filter(({ verdict }) => verdict !== 'stop');
/** Fixed texts that stand whole on some paper; none of them is a word that also comes out of a list. */
const ENGLISH_MARKS = [
  'card.name',
  'card.cautions',
  'card.sign-operator',
  'card.confirmed',
  'checks.title',
  'drawing.numbers-run',
  'drawing.bolt-one',
  'kit.whole',
  'tag.stop',
  'preload.interval',
  'work.title',
  'paper.prepared',
  'col.end',
  'report.title',
  'report.open',
  'report.joint.told',
  'report.signatures',
  'report.proof.root',
  'report.how.batch',
] as const;
const source = await reportSourceOf(testSource(toldBook()), TEST_LOG, '0.1.0');
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
    const issued = issuePlan(job, plan, [], { number: 'P-1', jointId: () => jointId(1) }).cards.find(
      ({ slice }) => slice.tag === going[0]!.tag,
    )!;
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

describe.each((Object.keys(LANGUAGES) as Language[]).filter((language) => language !== 'en'))('papers in %s above English', (language) => {
  const languages = async () => [await loadWords(language), ENGLISH_WORDS] as const;

  test('cards say every step, end, caution and check in both, and the setting once', async () => {
    const [own, english] = await languages();
    const pdf = readPdf(await cardsPdf(plan, { ...options, languages: [own, english], paper: 'A5' }));
    expect(pdf.faults()).toBe('');
    const said = new Set(pdf.text().split(/\s+/));
    const joint = going[0]!;
    const text = pagesOf(pdf, joint.tag);
    for (const words of [own, english]) {
      const told = [
        ...joint.cautions.map(words.caution),
        ...joint.checks.map(({ check }) => words.label(`checks.${check}`)),
        ...joint.subgroups.flatMap(({ tightening }) => tightening!.steps.flatMap((step) => [words.step(step.name), words.end(step.end)])),
        words.label('card.sign-operator'),
        words.label('drawing.bolt-one'),
      ];
      // columns stand beside each other in the text: every word of a sentence must be there
      for (const sentence of told)
        for (const word of sentence.split(/\s+/)) expect(said.has(word), `${words.language}: ${word} of “${sentence}”`).toBe(true);
    }
    for (const { tightening } of joint.subgroups)
      for (const { setting } of tightening!.steps)
        if (setting) expect(text.split(setting.text).length - 1, setting.text).toBeGreaterThan(0);
  });

  test('one language alone has no English word of ours on it', async () => {
    const own = await loadWords(language);
    const papers = [
      await cardsPdf(plan, { ...options, languages: [own], paper: 'A6' }),
      await tagsPdf(plan, { ...options, languages: [own], paper: 'roll' }),
      await kitPdf(plan, { ...options, languages: [own] }),
      await planPdf(plan, { ...options, languages: [own] }),
      await reportPdf(source, { ...options, languages: [own] }),
    ];
    for (const bytes of papers) {
      const text = joined(readPdf(bytes).text());
      for (const key of ENGLISH_MARKS) {
        const english = ENGLISH_WORDS.label(key);
        if (english !== own.label(key)) expect(text, `${language}: ${english}`).not.toContain(english);
      }
    }
  });
});
