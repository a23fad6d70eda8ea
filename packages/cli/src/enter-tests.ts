import { randomBytes } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { civilDate, type Notice, notice } from '@clampwright/core';
import type { JudgedTest } from '@clampwright/papers';
import { type Fold, hashOf, idOf, openFold } from '@clampwright/record';
import { atDesk, entriesOf, findYard } from '@clampwright/server';
import type { Store } from '@clampwright/store';
import { say } from '@clampwright/words';
import { atBooks, type DeskOptions, onlyShown } from './desk-book.ts';
import { EXIT, refuse } from './exit.ts';
import { fails, lineOf } from './judged-text.ts';
import { faultsText } from './plan-text.ts';

type LotTest = Extract<JudgedTest, { kind: 'suitability' | 'verification' | 'rotational-capacity' }>;
type Shots = Extract<JudgedTest, { kind: 'shots' }>;
const isLotTest = (one: JudgedTest): one is LotTest => Object.hasOwn(RULES, one.kind);

/** What a test of a lot is called in the log. */
const RULES = {
  suitability: 'EN 14399 suitability for preloading',
  verification: 'RCSC pre-installation verification',
  'rotational-capacity': 'FHWA/AASHTO rotational capacity',
} as const satisfies Readonly<Record<LotTest['kind'], string>>;

/** Tests of lots and checks of tools become entries of a book, with the file beside them; a lot that the book does not know is registered first. */
export async function enterTests(
  book: string,
  file: string,
  judged: readonly JudgedTest[],
  options: DeskOptions & { readonly done?: string },
): Promise<number> {
  const { done } = options;
  if (done === undefined || civilDate(done) !== done) return refuse('--done: write the day on which it was measured, year-month-day');
  const lotTests = judged.filter(isLotTest);
  const shots = judged.filter((one) => one.kind === 'shots');
  if (judged.length === 0) return refuse('Nothing in the file is a measured series.');
  return atBooks(options, async (store) => {
    const fold = await foldOf(store, book);
    if (fold.size() === 0) return refuse(`There is no book ${book}.`);
    const bytes = new Uint8Array(readFileSync(file));
    const name = basename(file);
    const lots = new Map(fold.ids('lot').map((id) => [fold.state('lot', id).name, id]));
    const notices = [
      ...(fold.state('book', 'book').imports.some((one) => one.file === hashOf(bytes))
        ? [notice('records-known', { name }, { file: name })]
        : []),
      ...unknownLots(lotTests, lots, name),
      ...(await unknownTools(store, shots, fold, name)),
    ];
    if (notices.length > 0) return refuse(`${faultsText(notices, 'metric')}\n\nNothing was entered.`);
    process.stdout.write(`\n${shown(lotTests, shots, judged, lots)}\n\n`);
    if (!options.write) return onlyShown('right');
    const paper = { paper: { done, card: `file ${name}`.slice(0, 120) } };
    const entered = await atDesk(
      store,
      book,
      () => new Date(),
      async (desk) => {
        const kept = await desk.attach(book, bytes);
        // gaps that name no bolts and counts of charges have no entry of their own: their verdict stands with the file
        const text = judged.map(lineOf).join('\n').slice(0, 2000);
        await desk.append(book, 'imported', { file: kept, name: name.slice(0, 120), text }, paper);
        for (const one of lotTests) {
          const lot = lots.get(one.of) ?? idOf('lot', randomBytes(16));
          if (!lots.has(one.of))
            await desk.append(book, 'lot-registered', { lot, name: one.of, designation: designationOf(lotTests, one.of)! }, paper);
          lots.set(one.of, lot);
          await desk.append(book, 'suitability-tested', { lot, rule: RULES[one.kind], passed: !fails(one), report: kept }, paper);
        }
        for (const one of shots)
          await desk.append(
            book,
            'tool-checked',
            {
              tool: one.of,
              setting: settingOf(one),
              passed: !fails(one),
              readingNewtonMillimetre: Math.round(one.verdict.mean),
              ...(one.against === undefined ? {} : { against: one.against }),
            },
            paper,
          );
      },
    );
    if (!entered.ok) return refuse(`Nothing was entered.\n${faultsText(entered.notices, 'metric')}`);
    process.stdout.write(`Entered: ${entered.value} entries, and ${name} beside them (${hashOf(bytes).slice(0, 12)}…).\n`);
    return EXIT.fine;
  });
}

async function foldOf(store: Store, book: string): Promise<Fold> {
  const fold = openFold();
  for (const one of await entriesOf(store, book)) fold.add(one);
  return fold;
}

function unknownLots(tests: readonly LotTest[], lots: ReadonlyMap<string | undefined, string>, file: string): Notice[] {
  return tests
    .filter(({ of }) => !lots.has(of) && designationOf(tests, of) === undefined)
    .map(({ of }) => notice('entered-lot-unknown', { lot: of }, { file }));
}

/** What any of the tests says of the lot's fasteners. */
const designationOf = (tests: readonly LotTest[], lot: string): string | undefined =>
  tests.find(({ of, designation }) => of === lot && designation !== undefined)?.designation;

async function unknownTools(store: Store, shots: readonly Shots[], fold: Fold, file: string): Promise<Notice[]> {
  const yard = await findYard(store);
  const tools = new Set([...fold.ids('tool'), ...(yard ? (await foldOf(store, yard.id)).ids('tool') : [])]);
  return shots.filter(({ of }) => !tools.has(of)).map(({ of }) => notice('entered-tool-unknown', { tool: of }, { file }));
}

/** What the tool was set to; where the file does not say it, the torque its chart gives there. */
const settingOf = ({ setting, expected }: Shots): string => setting ?? `for ${say({ dimension: 'torque', value: expected })}`;

function shown(
  lotTests: readonly LotTest[],
  shots: readonly Shots[],
  all: readonly JudgedTest[],
  lots: ReadonlyMap<string | undefined, string>,
): string {
  const fresh = new Set(lotTests.filter(({ of }) => !lots.has(of)).map(({ of }) => of));
  const left = all.length - lotTests.length - shots.length;
  return [
    'To be entered:',
    ...[...fresh].map((lot) => `  lot ${lot}, ${designationOf(lotTests, lot)}: not in this book yet`),
    ...lotTests.map((one) => `  test of lot ${one.of}: ${fails(one) ? 'not passed' : 'passed'}`),
    ...shots.map((one) => `  check of tool ${one.of}, setting ${settingOf(one)}: ${fails(one) ? 'not passed' : 'passed'}`),
    ...(left > 0 ? [`  series whose verdict is entered with the file: ${left}`] : []),
  ].join('\n');
}
