import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join, sep } from 'node:path';
import { promisify } from 'node:util';
import { gzip } from 'node:zlib';
import { Hono } from 'hono';

const TYPES: Readonly<Record<string, string>> = {
  html: 'text/html; charset=utf-8',
  js: 'text/javascript; charset=utf-8',
  css: 'text/css; charset=utf-8',
  svg: 'image/svg+xml',
  png: 'image/png',
  woff2: 'font/woff2',
  wasm: 'application/wasm',
  json: 'application/json',
  webmanifest: 'application/manifest+json',
};

/** The app may run its own scripts and speak with its own server, and nothing else. */
const POLICY = [
  "default-src 'none'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "media-src 'self' blob:",
  // a report is shown where it was made, from memory
  'frame-src blob:',
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ');

/** What is compressed already is sent as it is. */
const PACKED: ReadonlySet<string> = new Set(['png', 'woff2']);
const packed = promisify(gzip);

interface AppFile {
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly type: string;
  readonly tag: string;
  /** Its gzip form, made when it is first asked for and kept; `undefined` where it would gain nothing. */
  readonly packed: (() => Promise<Uint8Array<ArrayBuffer>>) | undefined;
}

function appFile(bytes: Uint8Array<ArrayBuffer>, ending: string): AppFile {
  let kept: Promise<Uint8Array<ArrayBuffer>> | undefined;
  const pack = () => (kept ??= packed(bytes, { level: 9 }).then((small) => new Uint8Array(small)));
  return {
    bytes,
    tag: createHash('sha256').update(bytes).digest('base64url').slice(0, 22),
    type: TYPES[ending] ?? 'application/octet-stream',
    packed: PACKED.has(ending) ? undefined : pack,
  };
}

/** Serves the built app from memory. Files with a hash in their name never change; the page itself and the worker are asked for anew. */
export function appPages(folder: string): Hono {
  const files = new Map(
    filesIn(folder).map((path) => [
      `/${path.split(sep).join('/')}`,
      appFile(new Uint8Array(readFileSync(join(folder, path))), path.split('.').at(-1)!),
    ]),
  );
  const app = new Hono();
  app.get('*', async (c) => {
    const { path } = c.req;
    const file = files.get(path) ?? (isPage(path) ? files.get('/index.html') : undefined);
    if (!file) return c.notFound();
    const small = c.req.header('accept-encoding')?.includes('gzip') ? file.packed : undefined;
    const tag = `"${file.tag}${small ? '-gzip' : ''}"`;
    const headers = {
      'Content-Type': file.type,
      'Content-Security-Policy': POLICY,
      'Permissions-Policy': 'camera=(self), screen-wake-lock=(self), publickey-credentials-get=(self), publickey-credentials-create=(self)',
      ETag: tag,
      Vary: 'Accept-Encoding',
      'Cache-Control': path.startsWith('/assets/') ? 'public, max-age=31536000, immutable' : 'no-cache',
    };
    if (c.req.header('if-none-match') === tag) return c.body(null, 304, headers);
    return small ? c.body(await small(), 200, { ...headers, 'Content-Encoding': 'gzip' }) : c.body(file.bytes, 200, headers);
  });
  return app;
}

/** Every address without a dot is a page of the app, which finds its own way. */
const isPage = (path: string): boolean => !path.startsWith('/api/') && !path.startsWith('/assets/') && !path.includes('.');

const filesIn = (folder: string): string[] =>
  (readdirSync(folder, { recursive: true }) as string[]).filter((path) => statSync(join(folder, path)).isFile());
