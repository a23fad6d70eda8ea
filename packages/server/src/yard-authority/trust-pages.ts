import { pageCss, trustedHtml, trustHtml } from '@clampwright/papers';
import { Hono } from 'hono';
import { secure } from '../secure.ts';
import type { YardAuthority } from './authority.ts';

const TRUSTED_PATH = '/trusted';
const STYLE_PATH = '/style.css';
const FONT_PATH = '/fonts/letters.woff2';
const CERTIFICATE_PATH = '/yard-authority.crt';

export interface TrustPagesOptions {
  readonly authority: YardAuthority;
  /** what it was made for, besides private names */
  readonly names: readonly string[];
  /** of the server, as devices reach it */
  readonly addresses: () => readonly string[];
  readonly font?: Uint8Array;
}

/** What a device needs before it trusts the server, over plain HTTP: how to trust it, and the certificate. Nothing else goes this way. */
export function trustPages({ authority, names, addresses, font }: TrustPagesOptions): Hono {
  const app = new Hono();
  app.use(secure);
  app.get('/', (c) =>
    c.html(
      trustHtml({
        fingerprint: authority.fingerprint,
        until: authority.until.toISOString().slice(0, 10),
        names,
        certificate: CERTIFICATE_PATH,
        tries: addresses().map((address) => `${address}${TRUSTED_PATH.slice(1)}`),
        style: STYLE_PATH,
      }),
    ),
  );
  app.get(CERTIFICATE_PATH, (c) =>
    c.body(new Uint8Array(authority.certificate), 200, {
      'Content-Type': 'application/x-x509-ca-cert',
      'Content-Disposition': 'attachment; filename="yard-authority.crt"',
    }),
  );
  return app.route('/', looks(font));
}

/** What a device sees over TLS that has come to trust the yard. */
export function trustedPage(font?: Uint8Array): Hono {
  const app = new Hono();
  app.get(TRUSTED_PATH, (c) => c.html(trustedHtml({ style: STYLE_PATH, home: '/' })));
  return app.route('/', looks(font));
}

function looks(font?: Uint8Array): Hono {
  const app = new Hono();
  app.get(STYLE_PATH, (c) => c.body(pageCss(FONT_PATH), 200, { 'Content-Type': 'text/css; charset=utf-8' }));
  app.get(FONT_PATH, (c) => (font ? c.body(new Uint8Array(font), 200, { 'Content-Type': 'font/woff2' }) : c.notFound()));
  return app;
}
