import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { type Language, loadTexts } from '../packages/words/src/app/index.ts';
import { loadWords } from '../packages/words/src/index.ts';
import { loadOfficeTexts } from '../packages/words/src/office/index.ts';
import { PAPER_DE } from '../packages/words/src/printed/de.ts';
import { PAPER_ES } from '../packages/words/src/printed/es.ts';
import { PAPER_PL } from '../packages/words/src/printed/pl.ts';
import { PAPER_PT } from '../packages/words/src/printed/pt.ts';
import { PRINTED_EN } from '../packages/words/src/printed/texts.ts';
import { type Piece, piecesOf } from '../packages/words/src/test-messages.ts';

/** Words that are English and nothing else among the languages of the house. */
const ENGLISH_ALONE = /(^|[^\p{L}])(the|of|with|and|this|that|which|from|are|until|each|every|its|not yet|may|when)(?![\p{L}])/iu;

/** Finds what is English on a page in another language: a text of ours by its catalogue, any other by words that no other language has. */
export async function englishFinder(language: Language, told: readonly string[]): Promise<(text: string) => boolean> {
  const own = await catalogue(language);
  const english = (await catalogue('en')).filter((text) => /\p{L}{3}/u.test(text));
  const spoken = new Set(own);
  const known = english.filter((text) => !spoken.has(text));
  const plain = new Set([...known.filter((text) => !text.includes('{')), ...(await carriedWords(language))]);
  const filled = known.filter((text) => text.includes('{')).flatMap(patternOf);
  const data = dataOfDemo();
  // a single word of the demo may be a word of ours as well
  const sentences = new Set([...told, ...data.filter((one) => one.split(' ').length > 2)]);
  const written = [...sentences].map((one) => new RegExp(`(?<!\\p{L})${literally(one)}(?!\\p{L})`, 'gu'));
  return (shown) => {
    const text = shown.trim();
    if (sentences.has(text)) return false;
    if (plain.has(text) || filled.some((one) => one.test(text))) return true;
    return ENGLISH_ALONE.test(written.reduce((rest, one) => rest.replace(one, ''), text));
  };
}

const PRINTED = { en: PRINTED_EN, de: PAPER_DE.printed, es: PAPER_ES.printed, pl: PAPER_PL.printed, pt: PAPER_PT.printed };
async function catalogue(language: Language): Promise<string[]> {
  const { app, trade, notice } = await loadTexts(language);
  const inside = (of: object): string[] => Object.values(of).flatMap((one) => (typeof one === 'string' ? [one] : inside(one as object)));
  return [app, trade, notice, await loadOfficeTexts(language), PRINTED[language]].flatMap(inside);
}

/** Words that notice, plan and log carry in English, where this language says them otherwise. */
async function carriedWords(language: Language): Promise<string[]> {
  const { notice } = await loadTexts(language);
  const { term } = await loadWords(language);
  return [...Object.keys(notice.terms), ...Object.keys(PAPER_DE.terms)].filter((word) => /\p{L}{4}/u.test(word) && term(word) !== word);
}

/** A message as a text that was filled in would match it; nothing where too little of it is fixed to tell it by. */
function patternOf(message: string): RegExp[] {
  const fixed = piecesOf(message, 'en')
    .filter(({ type }) => type === 0)
    .map(({ value }) => String(value))
    .join(' ');
  return /\p{L}{3,}[^\p{L}]+\p{L}{3,}|\p{L}{6,}/u.test(fixed) ? [new RegExp(`^${patternText(topPieces(message))}$`, 'u')] : [];
}
const topPieces = (message: string): Piece[] => {
  const all = piecesOf(message, 'en');
  const nested = new Set(all.flatMap(({ options }) => Object.values(options ?? {}).flatMap(({ value }) => value)));
  return all.filter((one) => !nested.has(one));
};
const patternText = (pieces: readonly Piece[]): string =>
  pieces
    .map(({ type, value, options }) =>
      type === 0
        ? literally(String(value))
        : options
          ? `(?:${Object.values(options)
              .map((one) => patternText(one.value))
              .join('|')})`
          : '.+?',
    )
    .join('');

const literally = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

/** What the demo's own files say stays as it was written. */
const dataOfDemo = (): string[] =>
  (readdirSync('demo', { recursive: true, withFileTypes: true }) as { isFile: () => boolean; parentPath: string; name: string }[])
    .filter((one) => one.isFile() && /\.(yaml|csv)$/.test(one.name) && !one.parentPath.includes('plan'))
    .flatMap((one) => readFileSync(join(one.parentPath, one.name), 'utf8').split('\n'))
    .flatMap((line) => [line, ...line.split(/[,;{}]|: /), ...line.split(/: /)])
    .map((one) => one.trim().replace(/^["']|["' }]+$/g, ''))
    .filter((one) => /\p{L}{3}/u.test(one))
    .toSorted((a, b) => b.length - a.length);

/** Everything a page says: text that is seen, and names that are read aloud. What is folded away is opened first. */
export const textsOn = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    for (const one of document.querySelectorAll('details')) one.open = true;
    const said = new Set<string>();
    const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walk.nextNode(); node; node = walk.nextNode()) {
      const around = node.parentElement!;
      // a table, what it offers, and the headings of a list are the file's own words
      if (
        around.closest('script, style, datalist, [translate=no], [role=gridcell], [role=grid] [role=columnheader]') ||
        !(around.closest('option') || around.checkVisibility())
      )
        continue;
      said.add(node.textContent!.trim());
    }
    for (const one of document.querySelectorAll('[aria-label], [placeholder], [title], [alt]'))
      for (const name of ['aria-label', 'placeholder', 'title', 'alt']) said.add(one.getAttribute(name) ?? '');
    said.delete('');
    return [...said];
  });
