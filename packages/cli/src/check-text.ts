import type { CaseResult, Judged, tally } from '@clampwright/reference';
import { textTable } from './text-table.ts';

type Tally = ReturnType<typeof tally>;

const show = (value: unknown) => (typeof value === 'number' ? String(Number(value.toPrecision(8))) : JSON.stringify(value));

/** Per topic how the engine stands, every difference with both numbers, and the line that scripts read. */
export function rowsText(results: readonly Judged[], { topics, all }: Tally): string {
  const table = textTable(
    ['topic', 'agreed', 'disagreed', 'disputed', 'not evaluated', 'not the product’s'],
    [...topics].map(([topic, count]) => [topic, ...Object.values(count).map(String)]),
  );
  const differing = results.flatMap(({ row, judgement, found }) =>
    judgement === 'disagreed' || judgement === 'disputed'
      ? [
          `${judgement} ${row.id} ${row.topic}/${row.quantity}: the row says ${show(row.expected)} ${row.unit}, the engine ${show(found)}; source ${row.source}`,
        ]
      : [],
  );
  const problems = results.flatMap(({ row, problem }) =>
    problem ? [`not evaluated ${row.id} ${row.topic}/${row.quantity}: ${problem}`] : [],
  );
  return [
    `${table}\n`,
    ...differing,
    ...problems,
    `${all["not the product's"]} rows ask for what a bolting plan does not compute; they are counted apart.`,
    `agreed ${all.agreed}, disagreed ${all.disagreed}, disputed ${all.disputed}, not evaluated ${all['not evaluated']}`,
  ].join('\n');
}

/** Both errors of every joint, and the line that scripts read. */
export function casesText(results: readonly CaseResult[]): string {
  const table = textTable(
    ['joint', 'given matrix, N', 'given matrix, %', 'from dimensions, %'],
    results.map(({ id, givenN, givenPercent, modelPercent }) => [id, givenN.toFixed(3), givenPercent.toFixed(5), modelPercent.toFixed(2)]),
  );
  const model = results.map(({ modelPercent }) => modelPercent).sort((a, b) => a - b);
  const worstGiven = Math.max(...results.map(({ givenPercent }) => givenPercent));
  return [
    `${table}\n`,
    'Largest error of a final force, in % of target. The model is linear, bonded and gap-free, the bolt a spring: 5–7 % against a solid bolt in soft joints.',
    `cases ${results.length}, given matrix worst ${worstGiven.toFixed(5)} %, from dimensions worst ${model.at(-1)!.toFixed(2)} % median ${median(model).toFixed(2)} %`,
  ].join('\n');
}

const median = (sorted: readonly number[]): number => {
  const half = sorted.length / 2;
  return (sorted[Math.floor(half - 0.5)]! + sorted[Math.floor(half)]!) / 2;
};
