import { type Measure, type NoticeCode, notice, RULE_SETS } from '@clampwright/core';
import { describe, expect, test } from 'vitest';
import { ENGLISH, LANGUAGES, type Language, loadTexts, speaker } from './app/index.ts';
import { EN_NOTICES } from './en/index.ts';
import { TERMS } from './en/terms.ts';
import { remedy, says, whereabouts } from './notice.ts';
import { parametersOf, piecesOf } from './test-messages.ts';

const OTHERS = (Object.keys(LANGUAGES) as Language[]).filter((language) => language !== 'en');
const CODES = Object.keys(EN_NOTICES) as NoticeCode[];
const PARTS = ['says', 'remedy'] as const;

const PLURAL = 6;

/** What must stand in every language as it is: figures, standards, options, files. */
const kept = (text: string) =>
  (text.replace(/\{[^{}]*\}/g, ' ').match(/--\w+|\/api\/[\w/]+|\b[\w/.-]*(?:\d|\.yaml|\.md|\.ifc)[\w/.-]*\b/g) ?? []).sort();

const measure = (dimension: Measure['dimension'], value: number) => ({ dimension, value }) as Measure;

const speakerOf = async (language: Language) => speaker(language, await loadTexts(language));

describe.each(OTHERS)('what notices say, %s', (language) => {
  test('names the parameters of the English, and no other', async () => {
    const { notices } = (await loadTexts(language)).notice;
    for (const code of CODES)
      for (const part of PARTS)
        expect(parametersOf(notices[code][part], language), `${code} ${part}`).toEqual(parametersOf(EN_NOTICES[code][part], 'en'));
  });

  test('counts with every form the language has', async () => {
    const { notices } = (await loadTexts(language)).notice;
    const forms = new Intl.PluralRules(language, { type: 'cardinal' }).resolvedOptions().pluralCategories;
    // of a million, which Spanish and Portuguese have a form of their own for, nothing is counted here
    const wanted = forms.filter((form) => form !== 'many' || language === 'pl');
    for (const code of CODES)
      for (const part of PARTS)
        for (const { type, options } of piecesOf(notices[code][part], language))
          if (type === PLURAL) expect(Object.keys(options!), `${code} ${part}`).toEqual(expect.arrayContaining(wanted));
  });

  test('chooses between the same words', async () => {
    const { notices } = (await loadTexts(language)).notice;
    const choices = (text: string, of: string) =>
      piecesOf(text, of).flatMap(({ type, options }) => (type === 5 ? [Object.keys(options!).sort().join(' ')] : []));
    for (const code of CODES)
      for (const part of PARTS)
        expect(new Set([...choices(EN_NOTICES[code][part], 'en'), ...choices(notices[code][part], language)]).size, code).toBeLessThan(2);
  });

  test('keeps figures, standards, options and files as they are', async () => {
    const { notices } = (await loadTexts(language)).notice;
    for (const code of CODES)
      for (const part of PARTS) expect(kept(notices[code][part]), `${code} ${part}`).toEqual(kept(EN_NOTICES[code][part]));
  });

  test('leaves nothing empty and nothing in English', async () => {
    const { notices } = (await loadTexts(language)).notice;
    const same = CODES.filter((code) =>
      PARTS.some((part) => notices[code][part].trim() === '' || notices[code][part] === EN_NOTICES[code][part]),
    );
    // names and figures alone
    expect(same).toEqual([]);
  });

  test('can be said', async () => {
    const { notice: words } = await speakerOf(language);
    for (const code of CODES) {
      const params = Object.fromEntries(PARTS.flatMap((part) => parametersOf(EN_NOTICES[code][part], 'en')).map((name) => [name, 3]));
      const one = { code, params } as never;
      for (const part of PARTS) expect(words[part](one), `${code} ${part}`).not.toMatch(/[{}]|undefined|NaN/);
    }
  });

  test('has every word that a notice carries', async () => {
    const { terms } = (await loadTexts(language)).notice;
    expect(TERMS.filter((word) => !terms[word]?.trim())).toEqual([]);
  });
});

test('the title of every rule set is a word that notices carry', () => {
  const known: readonly string[] = TERMS;
  expect(Object.values(RULE_SETS).filter(({ title }) => !known.includes(title))).toEqual([]);
});

describe('a notice in the reader’s language', () => {
  const small = notice('tool-too-small', {
    tool: 'SK-7',
    largest: measure('torque', 812_500),
    low: measure('torque', 8500),
    high: measure('percent', 0.055),
  });
  test('has its decimal sign and its units', async () => {
    const german = (await speakerOf('de')).notice;
    expect(german.says(small)).toBe('Werkzeug SK-7 erreicht höchstens 813\u00a0N·m; das Verfahren verlangt 8,5\u00a0N·m bis 5,5\u00a0%.');
    expect(german.says(small, 'US')).toContain('6,3\u00a0lbf·ft');
    expect(german.says(notice('inspection-too-early', { hours: 2.5, from: 12 }))).toMatch(/^2,5 h /);
    expect(ENGLISH.notice.says(notice('inspection-too-early', { hours: 2.5, from: 12 }))).toMatch(/^2\.5 h /);
  });

  test('has it in a figure that comes as text, and in no name', async () => {
    const german = (await speakerOf('de')).notice;
    const doubt = notice('torque-unit-doubt', { torque: measure('torque', 500_000), k: '0.62', basis: 'k' });
    expect(german.says(doubt)).toContain('einen k-Faktor von 0,62');
    expect(german.says(notice('supply-weak', { serial: '3.5', what: '5.5 bar', wanted: '6.3 bar' }))).toBe(
      'Werkzeug 3.5: vorhanden 5,5 bar; verlangt 6,3 bar.',
    );
  });

  test('that this version has no words for is said by its code', async () => {
    const newer = { code: 'of-a-newer-version', params: {} } as never;
    expect(says(newer)).toBe('of-a-newer-version');
    expect((await speakerOf('es')).notice.remedy(newer)).toBe('of-a-newer-version');
  });

  test('counts as the language does', async () => {
    const polish = (await speakerOf('pl')).notice;
    const shots = (count: number) => polish.says(notice('check-few-shots', { shots: count, wanted: 3 }));
    expect([1, 2, 5].map(shots)).toEqual([
      'Tylko 1 pociągnięcie: to nic nie mówi o rozrzucie.',
      'Tylko 2 pociągnięcia: to nic nie mówi o rozrzucie.',
      'Tylko 5 pociągnięć: to nic nie mówi o rozrzucie.',
    ]);
  });

  test('translates the words it carries, alone and in a row, and leaves names alone', async () => {
    const german = (await speakerOf('de')).notice;
    expect(german.says(notice('k-class-needed', { method: 'combined method', needed: 'K1 / K2' }))).toContain('(kombiniertes Verfahren)');
    expect(german.remedy(notice('heading-row-missing', { wanted: 'joint, rule set, bolts' }))).toContain(
      'Verbindung, Regelwerk, Schrauben',
    );
    expect(german.says(notice('bolt-tightened-twice', { bolt: 4, step: 'first step' }))).toContain('„Erster Schritt“');
    // a tool that somebody named like one of our words
    expect(german.says(notice('tool-unknown', { serial: 'scale' }))).toContain('Werkzeug scale ');
    expect(german.says(notice('turned-not-tested', { lot: 'L1', turned: 'head', tested: 'nut' }))).toContain(
      'an der Mutter gedreht geprüft',
    );
  });

  test('says where it was found', async () => {
    const place = { file: 'joints.xlsx', sheet: 'Plan', row: 14, column: 'clamp', letter: 'F', read: 'abc' };
    const found = notice('number-wanted', { wanted: 'a whole number of bolts' }, place);
    expect(whereabouts(found)).toBe('joints.xlsx, sheet Plan, row 14, column F (clamp) (read “abc”)');
    expect((await speakerOf('es')).notice.whereabouts(found)).toBe('joints.xlsx, hoja Plan, fila 14, columna F (clamp) (leído «abc»)');
    expect((await speakerOf('pt')).notice.whereabouts(notice('file-empty', { file: 'a' }))).toBe('');
  });

  test('says a setting with the words of its labels, and its figures as they are', async () => {
    const german = (await speakerOf('de')).trade;
    expect(german.settingText('gear 2, step 7')).toBe('Gang 2, Stufe 7');
    expect(german.settingText('pump pressure 310 bar')).toBe('Pumpendruck 310 bar');
    expect(ENGLISH.trade.settingText('gear 2, step 7')).toBe('gear 2, step 7');
  });

  test('is the same in English by either way', () => {
    const short = notice('protrusion-short', { bolt: 3, found: measure('length', 0.5), wanted: measure('length', 2) });
    expect([ENGLISH.notice.says(short), ENGLISH.notice.remedy(short)]).toEqual([says(short), remedy(short)]);
  });
});
