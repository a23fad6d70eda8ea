import type { Plan } from '@clampwright/core';
import {
  cardsPdf,
  dueCalendar,
  kitPdf,
  type Letters,
  type PaperOptions,
  planDays,
  planPdf,
  planTables,
  tableCsv,
  tablesXlsx,
  tagsPdf,
} from '@clampwright/papers/out';
import { type Language, loadWords } from '@clampwright/words';
import regular from 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf?url';
import bold from 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed-Bold.ttf?url';
import mono from 'dejavu-fonts-ttf/ttf/DejaVuSansMono.ttf?url';

export type PaperName = 'cards-a6' | 'cards-a5' | 'cards-two-up' | 'tags-sheet' | 'tags-roll' | 'kit' | 'plan' | 'xlsx' | 'csv' | 'ics';
/** The language of a paper, and one that stands smaller beneath it. */
export type PaperLanguages = readonly [Language, Language?];
type Files = Readonly<Record<string, string | Uint8Array>>;

const bytesAt = async (url: string) => new Uint8Array(await (await fetch(url)).arrayBuffer());
/** The faces ship with the app; the service worker has them without network. */
const letters = async (): Promise<Letters> => ({ regular: await bytesAt(regular), bold: await bytesAt(bold), mono: await bytesAt(mono) });

const MAKERS: { readonly [P in PaperName]: (plan: Plan, options: PaperOptions) => Promise<Files> } = {
  'cards-a6': async (plan, options) => ({ 'cards-A6.pdf': await cardsPdf(plan, { ...options, paper: 'A6' }) }),
  'cards-a5': async (plan, options) => ({ 'cards-A5.pdf': await cardsPdf(plan, { ...options, paper: 'A5' }) }),
  'cards-two-up': async (plan, options) => ({ 'cards-two-up.pdf': await cardsPdf(plan, { ...options, paper: 'A4' }) }),
  'tags-sheet': async (plan, options) => ({ 'tags-sheet.pdf': await tagsPdf(plan, { ...options, paper: 'sheet' }) }),
  'tags-roll': async (plan, options) => ({ 'tags-roll.pdf': await tagsPdf(plan, { ...options, paper: 'roll' }) }),
  kit: async (plan, options) => ({ 'kit.pdf': await kitPdf(plan, options) }),
  plan: async (plan, options) => ({ 'plan.pdf': await planPdf(plan, options) }),
  xlsx: async (plan, { made }) => ({ 'clampwright.xlsx': await tablesXlsx(planTables(plan), made) }),
  csv: async (plan) =>
    Object.fromEntries(planTables(plan).map((table) => [`${table.name.toLowerCase().replace(/\W+/g, '-')}.csv`, tableCsv(table)])),
  ics: async (plan, { made }) => ({ 'due-dates.ics': dueCalendar(plan.job.title, planDays(plan), made) }),
};

/** Makes one paper of a plan here, on this device. */
export const makePaper = async (
  name: PaperName,
  plan: Plan,
  [first, second]: PaperLanguages,
  progress: (done: number, of: number) => void,
): Promise<Files> =>
  MAKERS[name](plan, {
    letters: await letters(),
    languages: second === undefined ? [await loadWords(first)] : [await loadWords(first), await loadWords(second)],
    made: new Date(),
    progress,
  });
