import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** A PDF as others read it: poppler for text, fonts and pictures, qpdf for structure. */
export interface ReadPdf {
  readonly path: string;
  readonly pages: number;
  /** text of a page, 1-based; of all without a number */
  readonly text: (page?: number) => string;
  readonly fonts: () => readonly { readonly name: string; readonly embedded: boolean }[];
  /** what qpdf finds; empty where nothing is wrong */
  readonly faults: () => string;
  readonly outline: () => readonly string[];
  /** PNG of a page */
  readonly picture: (page: number, dotsPerInch: number) => Buffer;
  readonly metadata: () => string;
  /** every object of the file as qpdf tells it, streams by their dictionaries */
  readonly objects: () => Readonly<Record<string, unknown>>;
}

const folder = mkdtempSync(join(tmpdir(), 'clampwright-outside-'));
process.on('exit', () => rmSync(folder, { recursive: true, force: true }));
let made = 0;

export function readPdf(bytes: Uint8Array): ReadPdf {
  made += 1;
  const path = join(folder, `${made}.pdf`);
  writeFileSync(path, bytes);
  const run = (command: string, ...args: string[]) => execFileSync(command, args, { encoding: 'utf8', maxBuffer: 1 << 28 });
  return {
    path,
    pages: Number(/Pages:\s+(\d+)/.exec(run('pdfinfo', path))![1]),
    text: (page) => run('pdftotext', '-layout', ...(page === undefined ? [] : ['-f', String(page), '-l', String(page)]), path, '-'),
    fonts: () =>
      run('pdffonts', path)
        .split('\n')
        .slice(2)
        .filter(Boolean)
        .map((line) => ({ name: line.slice(0, 36).trim(), embedded: /\s(yes|no)\s+(yes|no)\s+(yes|no)\s/.exec(line)?.[1] === 'yes' })),
    faults: () => {
      const { status, stdout, stderr } = spawnSync('qpdf', ['--check', path], { encoding: 'utf8' });
      return status === 0 && stdout.includes('No syntax or stream encoding errors') ? '' : stdout + stderr;
    },
    outline: () => titlesOf((JSON.parse(run('qpdf', '--json', '--json-key=outlines', path)) as { outlines: Bookmark[] }).outlines),
    picture(page, dotsPerInch) {
      const stem = join(folder, `${made}-page`);
      run('pdftoppm', '-r', String(dotsPerInch), '-png', '-f', String(page), '-l', String(page), path, stem);
      const file = readdirSync(folder).find((name) => name.startsWith(`${made}-page`))!;
      const png = readFileSync(join(folder, file));
      rmSync(join(folder, file));
      return png;
    },
    metadata: () => run('pdfinfo', '-meta', path),
    objects: () => (JSON.parse(run('qpdf', '--json=2', '--json-key=qpdf', path)) as { qpdf: [unknown, Record<string, unknown>] }).qpdf[1],
  };
}

interface Bookmark {
  readonly title: string;
  readonly kids: readonly Bookmark[];
}

const titlesOf = (bookmarks: readonly Bookmark[]): string[] => bookmarks.flatMap(({ title, kids }) => [title, ...titlesOf(kids)]);
