import { useState } from 'react';
import { useOffice } from '../../../language/office-speech.tsx';
import { useNotice } from '../../../language/speech.tsx';
import type { At, Range } from './cells.ts';
import css from './grid.module.css';
import type { GridColumn, RowNotices } from './grid.tsx';

interface FootProps {
  readonly columns: readonly GridColumn[];
  readonly rows: readonly (readonly string[])[];
  readonly range: Range;
  readonly here: At;
  readonly notices: RowNotices | undefined;
  readonly onSet: (text: string) => void;
  readonly onInsert: () => void;
  readonly onRemove: () => void;
}

/** Under a grid: what is said of the cell in hand, and what can be done with what is chosen. */
export function GridFoot({ columns, rows, range, here, notices, onSet, onInsert, onRemove }: FootProps) {
  const say = useOffice();
  const { says, remedy } = useNotice();
  const [text, setText] = useState('');
  const height = range.bottom - range.top + 1;
  const many = rows.length > 0 && (height > 1 || range.right > range.left);
  const said = rows.length === 0 ? [] : [...(notices?.get(here.col) ?? []), ...(notices?.get(-1) ?? [])];
  return (
    <div className={css.foot}>
      <div className={css.actions}>
        <button type="button" onClick={onInsert}>
          {say('grid.add-row')}
        </button>
        <button type="button" onClick={onRemove} disabled={rows.length === 0}>
          {say('grid.remove-rows', { count: rows.length === 0 ? 0 : height })}
        </button>
        {many ? (
          <form
            onSubmit={(event) => {
              event.preventDefault();
              onSet(text.trim());
            }}
          >
            <label>
              <span>
                {say('grid.set-all', {
                  count: height * (range.right - range.left + 1),
                  column: range.left === range.right ? (columns[range.left]?.head ?? '') : '',
                })}
              </span>
              <input value={text} onChange={(event) => setText(event.target.value)} list="grid-set" />
            </label>
            {columns[range.left]?.choices ? (
              <datalist id="grid-set">
                {columns[range.left]!.choices!.map((one) => (
                  <option key={one} value={one} />
                ))}
              </datalist>
            ) : null}
            <button type="submit">{say('grid.set')}</button>
          </form>
        ) : null}
      </div>
      <div aria-live="polite" className={css.said}>
        {said.map((one) => (
          <p key={`${one.code}${JSON.stringify(one.params)}`}>
            <strong>{columns[here.col]?.head}:</strong> {says(one)} <em>{remedy(one)}</em>
          </p>
        ))}
      </div>
    </div>
  );
}
