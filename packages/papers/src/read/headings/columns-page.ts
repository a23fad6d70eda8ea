import { unitsOf } from '../quantity.ts';
import { fieldsOf, TABLES, type TableName } from '../tables/index.ts';
import { LANGUAGES } from './index.ts';

/** The page docs/columns.md: what a heading may be called, made from the tables themselves so that it cannot go stale. */
export function columnsPage(): string {
  const parts = (Object.keys(TABLES) as TableName[]).map((table) => {
    const rows = Object.entries(fieldsOf(table)).map(([key, { says, dimension }]) => {
      const headings = Object.values(LANGUAGES).map(
        (language) => (language[table] as Readonly<Record<string, readonly string[]>>)[key]!.join(', ') || '–',
      );
      return `| ${says} | ${headings.join(' | ')} | ${dimension === undefined ? '' : unitsOf(dimension) || 'plain number'} |`;
    });
    const { says } = TABLES[table];
    return `## ${says[0]!.toUpperCase()}${says.slice(1)}\n\n| means | ${Object.keys(LANGUAGES).join(' | ')} | units |\n| --- | --- | --- | --- |\n${rows.join('\n')}\n`;
  });
  return `# What columns mean

CSV and XLSX alike: columns in any order, below title rows, units in the heading (\`bolt length [mm]\`), in a row of their
own below it, or in the cell. Headings may stand in two rows, \`Bolt\` above \`Size\` and \`Length\`. A pressure table may run down or across. A heading that may mean
several things is asked; \`clampwright plan FOLDER --map "Bolt Ø=size"\` says once what it means (\`=ignore\`: nothing; \`=bolt length [mm]\`: with its
unit), and mapping.yaml of the job folder remembers it for every table with the same headings. A sheet of a workbook is named behind a #:
\`joints: list.xlsx#Bolts\`. Made by \`npx vitest run packages/papers/src/read/headings -u\`.

${parts.join('\n')}`;
}
