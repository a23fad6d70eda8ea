import type { Links } from '@clampwright/papers';

/** Where this server puts the pages. */
export const LINKS: Links = {
  home: '/',
  joint: (tag) => `/joint/${encodeURIComponent(tag)}`,
  cards: (tag) => (tag === undefined ? '/cards' : `/cards?tag=${encodeURIComponent(tag)}`),
  data: '/plan.json',
  style: '/style.css',
};

export const FONT_PATH = '/fonts/letters.woff2';
export const CARD_STYLE_PATH = '/cards.css';
