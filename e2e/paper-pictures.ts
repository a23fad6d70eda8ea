import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { planJob } from '../packages/core/src/index.ts';
import { readJob } from '../packages/papers/src/index.ts';
import { cardsPdf, planPdf, readOrganisation, reportPdf, reportSourceOf, tagsPdf } from '../packages/papers/src/out.ts';
import { installedLetters } from '../packages/papers/src/pdf/installed-letters.ts';
import { toldBook } from '../packages/papers/src/test-log.ts';
import { TEST_LOG, testSource } from '../packages/record/src/test-handover.ts';

const open = (path: string) => {
  try {
    return new Uint8Array(readFileSync(join('demo', path)));
  } catch {
    return 'missing' as const;
  }
};

/** Pictures of printed papers, by poppler: cards in A6 and two on A4, tags, plan and report. */
export async function paperPictures(folder: string): Promise<void> {
  const { organisation } = readOrganisation(open);
  const options = { letters: installedLetters(), made: new Date('2026-11-26T08:00:00Z'), ...(organisation ? { organisation } : {}) };
  const plan = planJob(readJob(open).job!);
  const source = await reportSourceOf(testSource(toldBook()), TEST_LOG, plan.engine);
  const report = await reportPdf(source, options);
  picture(await cardsPdf(plan, { ...options, paper: 'A6', tags: ['TB-R1'] }), 1, join(folder, 'paper-card-a6.png'), 100);
  picture(await cardsPdf(plan, { ...options, paper: 'A4', tags: ['FB-S1'] }), 1, join(folder, 'paper-cards-a4.png'), 80);
  picture(await tagsPdf(plan, { ...options, paper: 'sheet' }), 1, join(folder, 'paper-tags.png'), 70);
  picture(await planPdf(plan, options), 1, join(folder, 'paper-plan.png'), 70);
  picture(report, 1, join(folder, 'paper-report.png'), 70);
  picture(report, 2, join(folder, 'paper-report-joint.png'), 70);
}

function picture(pdf: Uint8Array, page: number, path: string, dotsPerInch: number): void {
  const folder = mkdtempSync(join(tmpdir(), 'clampwright-screens-'));
  writeFileSync(join(folder, 'paper.pdf'), pdf);
  execFileSync('pdftoppm', [
    '-r',
    String(dotsPerInch),
    '-png',
    '-f',
    String(page),
    '-l',
    String(page),
    join(folder, 'paper.pdf'),
    join(folder, 'page'),
  ]);
  writeFileSync(path, readFileSync(join(folder, readdirSync(folder).find((name) => name.endsWith('.png'))!)));
  rmSync(folder, { recursive: true });
}
