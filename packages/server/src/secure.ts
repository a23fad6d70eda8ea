import type { MiddlewareHandler } from 'hono';

const HEADERS: Readonly<Record<string, string>> = {
  'Content-Security-Policy':
    "default-src 'none'; style-src 'self'; img-src 'self' data:; font-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
};

/** Headers of every answer: no script unless a page states its own policy, nothing from elsewhere, nothing told to elsewhere. */
export const secure: MiddlewareHandler = async (context, next) => {
  await next();
  for (const [name, value] of Object.entries(HEADERS)) if (!context.res.headers.has(name)) context.header(name, value);
};
