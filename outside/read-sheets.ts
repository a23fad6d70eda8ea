import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';

/** Sheets of a workbook as LibreOffice shows them: by name, rows of cells as text. */
export function sheetsOf(workbook: Uint8Array): ReadonlyMap<string, readonly (readonly string[])[]> {
  const folder = mkdtempSync(join(tmpdir(), 'clampwright-sheets-'));
  try {
    writeFileSync(join(folder, 'book.xlsx'), workbook);
    // comma, quote, UTF-8, from line 1, formatted as shown, every sheet
    const filter = 'csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,false,false,false,false,-1';
    execFileSync(
      'soffice',
      [
        '--headless',
        `-env:UserInstallation=file://${folder}/profile`,
        '--convert-to',
        filter,
        '--outdir',
        folder,
        join(folder, 'book.xlsx'),
      ],
      {
        stdio: 'ignore',
        timeout: 120_000,
      },
    );
    return new Map(
      readdirSync(folder)
        .filter((name) => name.endsWith('.csv'))
        .map((name) => [
          name.slice('book-'.length, -'.csv'.length),
          parse(readFileSync(join(folder, name)), { relax_column_count: true }) as string[][],
        ]),
    );
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
