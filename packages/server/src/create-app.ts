import type { Plan } from '@clampwright/core';
import { cardCss, cardsHtml, jointHtml, missingHtml, pageCss, planHtml } from '@clampwright/papers';
import { Hono } from 'hono';
import { CARD_STYLE_PATH, FONT_PATH, LINKS } from './links.ts';
import { secure } from './secure.ts';

/** The pages of one plan: read only, nothing kept, nothing from elsewhere. `font`: the letters as WOFF2. */
export function createApp(plan: Plan, { font }: { readonly font?: Uint8Array } = {}): Hono {
  const app = new Hono({ strict: true });
  app.use(secure);
  app.get('/', (c) => c.html(planHtml(plan, LINKS)));
  app.get('/joint/:tag', (c) => {
    const page = jointHtml(plan, c.req.param('tag'), LINKS);
    return page === undefined ? c.notFound() : c.html(page);
  });
  app.get('/cards', (c) => {
    const tags = c.req.queries('tag');
    return c.html(cardsHtml(plan, { style: CARD_STYLE_PATH, ...(tags ? { tags } : {}) }));
  });
  app.get(LINKS.data, (c) => c.json(plan));
  app.get(LINKS.style, (c) => c.body(pageCss(FONT_PATH), 200, { 'Content-Type': 'text/css; charset=utf-8' }));
  app.get(CARD_STYLE_PATH, (c) => c.body(cardCss(FONT_PATH), 200, { 'Content-Type': 'text/css; charset=utf-8' }));
  app.get(FONT_PATH, (c) =>
    font ? c.body(new Uint8Array(font), 200, { 'Content-Type': 'font/woff2', 'Cache-Control': 'max-age=86400' }) : c.notFound(),
  );
  app.notFound((c) => c.html(missingHtml(LINKS), 404));
  return app;
}
