import { type CardPaper, cardsPdf, kitPdf, type TagPaper, tagsPdf } from '@clampwright/papers/out';
import { refuse } from './exit.ts';
import { type OutOption, plannedFor } from './planned-for.ts';

export interface CardsOptions extends OutOption {
  readonly paper: CardPaper;
  readonly joint?: readonly string[];
}

/** `clampwright cards FOLDER`: bolting cards to laminate, or two on a sheet for the printer in the van. */
export async function cardsCommand(folder: string, { paper, joint, ...asked }: CardsOptions): Promise<number> {
  let unknown: readonly string[] = [];
  const code = await plannedFor(folder, asked, 'cards, joints', async (plan, options) => {
    unknown = (joint ?? []).filter((tag) => !plan.joints.some((one) => one.tag === tag));
    return unknown.length > 0
      ? {}
      : { [`cards-${paper}.pdf`]: await cardsPdf(plan, { ...options, paper, ...(joint ? { tags: joint } : {}) }) };
  });
  return unknown.length > 0 ? refuse(`There is no joint ${unknown.join(', ')} in this plan; nothing was written.`) : code;
}

/** `clampwright tags FOLDER`: tags for the steel. */
export const tagsCommand = (folder: string, { paper, ...asked }: OutOption & { readonly paper: TagPaper }): Promise<number> =>
  plannedFor(folder, asked, 'tags, joints', async (plan, options) => ({
    [`tags-${paper}.pdf`]: await tagsPdf(plan, { ...options, paper }),
  }));

/** `clampwright kit FOLDER`: what to lay out, per lift and per joint. */
export function kitCommand(
  folder: string,
  { lift, ...asked }: OutOption & { readonly lift?: readonly string[] },
): Promise<number> | number {
  const lifts = lift?.map((one) => {
    const [name, tags] = one.split('=');
    return { name: name ?? '', tags: (tags ?? '').split('+').filter(Boolean) };
  });
  if (lifts?.some(({ name, tags }) => name === '' || tags.length === 0))
    return refuse('--lift: write NAME=TAG+TAG, for example north=FB-S1+FB-S2.');
  return plannedFor(folder, asked, 'kit, lifts', async (plan, options) => ({
    'kit.pdf': await kitPdf(plan, lifts ? { ...options, lifts } : options),
  }));
}
