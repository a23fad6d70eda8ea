import { type CaseResult, type Judged, judge, judgeCase, tally } from '@clampwright/reference';
import { casesText, rowsText } from './check-text.ts';
import { EXIT, refuse } from './exit.ts';
import { isFile } from './job-folder.ts';
import { type Broken, readChecks } from './read-checks.ts';

/** Final forces with the joint's own matrix have to follow to this share of target and this force, N. */
const GIVEN_SHARE = 1e-6;
const GIVEN_FORCE = 0.05;
/** From dimensions alone, % of target. */
const MODEL_PERCENT = 4;

/** `clampwright check FILE…`: holds the engine against published rows and finite-element joints, and says where they differ. */
export async function checkCommand(files: readonly string[], options: { readonly json?: boolean }): Promise<number> {
  const missing = files.filter((file) => !isFile(file));
  if (missing.length > 0) return refuse(missing.map((file) => `There is no file ${file}.`).join('\n'));
  const rows: Judged[] = [];
  const cases: CaseResult[] = [];
  const broken: Broken[] = [];
  let beyond = 0;
  for (const file of files)
    await readChecks(
      file,
      (row) => rows.push(judge(row)),
      (one) => {
        try {
          const result = judgeCase(one);
          cases.push(result);
          if (result.givenN > GIVEN_SHARE * one.bolts.target_N + GIVEN_FORCE || result.modelPercent > MODEL_PERCENT) beyond += 1;
        } catch (error) {
          broken.push({ file, line: 1, problem: `a joint whose data is missing or malformed: ${(error as Error).message}` });
        }
      },
      (one) => broken.push(one),
    );
  const counts = tally(rows);
  for (const { file, line, problem } of broken) process.stderr.write(`${file}, line ${line}: ${problem}\n`);
  if (options.json) {
    const differing = rows.filter(({ judgement }) => judgement === 'disagreed' || judgement === 'disputed');
    const report = { topics: Object.fromEntries(counts.topics), all: counts.all, differing, cases, broken };
    process.stdout.write(`${JSON.stringify(report, null, 2)}\n`);
  } else {
    if (cases.length > 0) process.stdout.write(`${casesText(cases)}\n`);
    if (rows.length > 0 || cases.length === 0) process.stdout.write(`${rowsText(rows, counts)}\n`);
  }
  return counts.all.disagreed > 0 || beyond > 0 || broken.length > 0 ? EXIT.stops : EXIT.fine;
}
