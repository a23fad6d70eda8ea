import { createServer } from 'node:http';
import { getRequestListener } from '@hono/node-server';
import { Hono } from 'hono';
import { listen, urlOf } from '../listen.ts';
import { type ServeBooksOptions, type ServingBooks, serveBooks } from '../log/serve-books.ts';
import { openAuthority } from './authority.ts';
import { isAddress, namesOfThisMachine } from './names.ts';
import { trustedPage, trustPages } from './trust-pages.ts';

export interface ServeYardOptions extends Omit<ServeBooksOptions, 'tls'> {
  /** where the authority lies, or is made */
  readonly authority: string;
  /** what the server is called besides the names of this machine */
  readonly names: readonly string[];
  /** of the page that walks a device through trusting it */
  readonly trustPort: number;
  readonly font?: Uint8Array;
  readonly now?: () => Date;
}

export interface ServingYard extends ServingBooks {
  /** addresses of the server, as devices reach it */
  readonly addresses: readonly string[];
  /** of the page that walks a device through trusting it, for every address */
  readonly trust: readonly string[];
  readonly fingerprint: string;
}

/** The authority was made without these names: devices would refuse a certificate for them. */
export class NamesNotOurs extends Error {
  constructor(
    readonly names: readonly string[],
    readonly folder: string,
  ) {
    super(`the yard's authority in ${folder} may not certify ${names.join(', ')}`);
  }
}

const DAY = 86_400_000;
const RENEW_BEFORE = 30 * DAY;

/** Serves the books over TLS with a certificate of the yard's own authority, and beside it the page by which devices come to trust it. */
export async function serveYard(options: ServeYardOptions): Promise<ServingYard> {
  const { authority: folder, names, trustPort, font, now = () => new Date(), host = '0.0.0.0' } = options;
  const mine = namesOfThisMachine(names);
  const authority = await openAuthority(folder, 'the yard', mine, now());
  const refused = authority.refuses(names);
  if (refused.length > 0) throw new NamesNotOurs(refused, folder);
  // an address that anybody can reach belongs to no yard
  const wanted = mine.filter((name) => authority.refuses([name]).length === 0);
  let tls = await authority.certify(wanted, now());
  const trustOnly = trustPages({
    authority,
    names: wanted.filter((name) => !isAddress(name)),
    addresses: () => addresses,
    ...(font ? { font } : {}),
  });
  // over TLS the app comes first, and behind it what a device sees that has come to trust
  const pages = new Hono().route('/', trustedPage(font)).route('/', options.pages ?? new Hono());
  const books = await serveBooks({ ...options, host, tls, pages });
  const reached = wanted.filter((name) => !isLoopback(name));
  const at = (scheme: 'http' | 'https', port: number) =>
    (reached.length > 0 ? reached : ['localhost']).map((name) => urlOf(scheme, name, port));
  const addresses = at('https', Number(new URL(books.url).port));
  const plain = createServer({ headersTimeout: 10_000, requestTimeout: 10_000 }, getRequestListener(trustOnly.fetch));
  const trust = await listen(plain, trustPort, host).catch(async (error) => {
    await books.close();
    throw error;
  });
  const renewal = setInterval(() => void renew().catch(() => undefined), DAY);
  renewal.unref();
  async function renew() {
    if (tls.until.getTime() - now().getTime() > RENEW_BEFORE) return;
    tls = await authority.certify(wanted, now());
    books.renew(tls);
  }
  return {
    ...books,
    addresses,
    trust: at('http', trust),
    fingerprint: authority.fingerprint,
    close: async () => {
      clearInterval(renewal);
      plain.closeAllConnections();
      plain.close();
      await books.close();
    },
  };
}

const isLoopback = (name: string) => name === 'localhost' || name === '::1' || name.startsWith('127.');
