/** Bolting cards, and the pages by which a device trusts its yard, as HTML: pure functions, data in, text out. */
import type { Plan } from '@clampwright/core';
import { label } from '@clampwright/words';
import { CardPage } from './card/card-page.tsx';
import { cardCss } from './card/card-style.ts';
import { documentHtml } from './document.tsx';

export { cardCss } from './card/card-style.ts';
export { pageCss } from './page-style.ts';
export { trustedHtml, trustHtml } from './trust-page.tsx';

export interface CardsOptions {
  /** the letters, put into the file so that it stands alone */
  readonly font?: Uint8Array;
  /** address of the style sheet, for a page that is served; without, the sheet is put into the file */
  readonly style?: string;
  /** only these joints */
  readonly tags?: readonly string[];
}

/** Bolting cards to print, A5; by default one file that stands alone. */
export function cardsHtml(plan: Plan, { font, style, tags }: CardsOptions = {}): string {
  const asked = tags && new Set(tags);
  return documentHtml({
    title: `${label('card.title')}: ${plan.job.title}`,
    style: style === undefined ? { css: cardCss(font && `data:font/woff2;base64,${base64(font)}`) } : { href: style },
    mark: 'clampwright-cards',
    children: <CardPage plan={plan} joints={asked ? plan.joints.filter(({ tag }) => asked.has(tag)) : plan.joints} />,
  });
}

/** In runs, since a call takes only so many arguments. */
function base64(bytes: Uint8Array): string {
  let text = '';
  for (let from = 0; from < bytes.length; from += 0x2000) text += String.fromCharCode(...bytes.subarray(from, from + 0x2000));
  return btoa(text);
}
