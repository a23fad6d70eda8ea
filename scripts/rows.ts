// A quick look while working: tsx scripts/rows.ts [topic-pattern]. Prints the tally and the rows that do not agree.
import { readdirSync, readFileSync } from 'node:fs';
import { judge, type Row, tally } from '../packages/reference/src/index.ts';

const pattern = new RegExp(process.argv[2] ?? '.');
const folder = 'packages/reference/rows';
const results = readdirSync(folder)
  .filter((name) => name.endsWith('.jsonl'))
  .flatMap((name) => readFileSync(`${folder}/${name}`, 'utf8').split('\n').filter(Boolean))
  .map((line) => JSON.parse(line) as Row)
  .filter(({ topic }) => pattern.test(topic))
  .map(judge);
for (const { row, judgement, found, problem } of results) {
  if (judgement === 'disagreed')
    console.log(
      'DISAGREED',
      row.id,
      row.topic,
      row.quantity,
      JSON.stringify(row.inputs),
      'expected',
      JSON.stringify(row.expected),
      'found',
      JSON.stringify(found),
      '|',
      row.note ?? '',
    );
  if (problem) console.log('PROBLEM', row.id, row.topic, row.quantity, problem);
}
const { topics, all } = tally(results);
for (const [topic, count] of topics) console.log(topic.padEnd(26), JSON.stringify(count));
console.log(JSON.stringify(all));
