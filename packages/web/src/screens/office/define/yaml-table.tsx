import type { YamlChange } from '@clampwright/papers/edit';
import type { OfficeKey } from '@clampwright/words/office';
import { useMemo } from 'react';
import { useOffice } from '../../../language/office-speech.tsx';
import { Grid, type RowNotices } from '../grid/grid.tsx';
import { type Path, useYaml } from './use-yaml.ts';

/** One column of a list in a YAML file. */
export interface YamlColumn {
  readonly key: string;
  readonly label: OfficeKey;
  readonly width: number;
  readonly yes?: boolean;
  readonly choices?: readonly string[];
}

interface TableProps {
  readonly label: string;
  readonly file: string;
  readonly path: Path;
  readonly columns: readonly YamlColumn[];
  readonly goToRow?: number | undefined;
}

const YES = /^(yes|true|x|ja|tak|sí|si|sim|1)$/i;

/** A list of a YAML file as a table: a row each, a column for each thing it may say. */
export function YamlTable({ label, file, path, columns, goToRow }: TableProps) {
  const say = useOffice();
  const yaml = useYaml(file);
  const list = yaml.at(path);
  const rows = useMemo(
    () =>
      (Array.isArray(list) ? (list as readonly Readonly<Record<string, unknown>>[]) : []).map((one) =>
        columns.map(({ key, yes }) => {
          const value = one?.[key];
          return value === undefined || value === null ? '' : yes ? (String(value) === 'true' ? say('app.yes') : '') : String(value);
        }),
      ),
    [list, columns, say],
  );
  const notices = useMemo(() => {
    const found = new Map<number, Map<number, (typeof yaml.said)[number][]>>();
    const start = `${path.join(' → ')} → `;
    for (const one of yaml.said) {
      const at = one.place?.path;
      if (at === undefined || !at.startsWith(start)) continue;
      const [row, key] = at.slice(start.length).split(' → ');
      const col = columns.findIndex((column) => column.key === key);
      const ofRow = found.get(Number(row)) ?? new Map();
      ofRow.set(col, [...(ofRow.get(col) ?? []), one]);
      found.set(Number(row), ofRow);
    }
    return found as ReadonlyMap<number, RowNotices>;
  }, [yaml.said, path, columns]);
  return (
    <Grid
      label={label}
      columns={columns.map(({ key, label: head, width, choices, yes }) => ({
        key,
        head: say(head),
        width,
        ...(choices ? { choices } : yes ? { choices: [say('app.yes')] } : {}),
      }))}
      rows={rows}
      notices={notices}
      height={12}
      goTo={goToRow === undefined ? undefined : { row: goToRow, col: 0 }}
      onChange={(changes) => {
        const made = new Map<number, Record<string, unknown>>();
        const edits = changes.flatMap(({ row, col, text }): YamlChange[] => {
          const { key, yes } = columns[col]!;
          const value = yes ? YES.test(text) || text === say('app.yes') : text;
          if (row >= rows.length) {
            if (text !== '') made.set(row, { ...made.get(row), [key]: value });
            return [];
          }
          const at = [...path, row, key];
          return [text === '' ? { kind: 'remove', path: at } : { kind: 'set', path: at, value }];
        });
        const added = [...made.values()].map((value, at): YamlChange => ({ kind: 'insert', path, at: rows.length + at, value }));
        yaml.change([...edits, ...added]);
      }}
      onInsert={(at) =>
        yaml.change([{ kind: 'insert', path, at, value: { [columns[0]!.key]: say('define.new', { number: rows.length + 1 }) } }])
      }
      onRemove={(gone) => yaml.change(gone.toReversed().map((row) => ({ kind: 'remove', path: [...path, row] })))}
    />
  );
}
