import { execFileSync } from 'node:child_process';

interface Once {
  readonly ms: number;
  readonly bytes: number;
  readonly pages: number;
  readonly mebibytes: number;
}

/** Median of three processes by time. */
function measured(name: string, count: number, runs = 3): Once {
  const all = Array.from({ length: runs }, () =>
    JSON.parse(
      execFileSync(process.execPath, ['--import', 'tsx', 'bench/paper-once.ts', name, String(count)], { encoding: 'utf8' })
        .trim()
        .split('\n')
        .at(-1)!,
    ),
  ) as Once[];
  return all.sort((a, b) => a.ms - b.ms)[Math.floor(runs / 2)]!;
}

const said = ({ ms, bytes, pages, mebibytes }: Once) =>
  `${(ms / 1000).toFixed(1).padStart(5)} s  ${mebibytes.toFixed(0).padStart(5)} MiB resident at most  ${(bytes / 1e6).toFixed(1)} MB${pages > 0 ? `  ${pages} pages` : ''}`;

/** What goes out: reports, cards, spreadsheets; each in a process of its own. */
export function papersBench(): void {
  console.log('\npapers out, each in a process of its own');
  console.log(
    `  report, 40 080 bolt rows, 167 rings:          ${said(measured('report of rings', 167, 1))} (target for 1 000 pages: under 20 s, 600 MiB)`,
  );
  console.log(`  report, 40 008 bolt rows, 1 667 joints:       ${said(measured('report', 1667, 1))} (a page or more for each joint)`);
  console.log(`  report of 1 000 pages, 673 joints:            ${said(measured('report', 673, 1))} (target: under 20 s, 600 MiB)`);
  console.log(`  report, 720 bolt rows:                        ${said(measured('report', 30))} (target for 50 pages: under 2 s)`);
  console.log(`  1 000 bolting cards, A5:                      ${said(measured('cards', 1000))} (target: under 15 s)`);
  const ours = measured('xlsx', 100_000);
  const next = measured('write-excel-file', 100_000);
  console.log(`  XLSX, 100 000 rows × 10:                      ${said(ours)} (target: under 5 s)`);
  console.log(`  beside write-excel-file 4.1.1:                ${said(next)}, ours over theirs ${(ours.ms / next.ms).toFixed(2)}`);
}
