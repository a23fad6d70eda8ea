import { type Millimetre, type Notice, notice, type Outcome, type Place } from '@clampwright/core';
import type { Columns } from './columns.ts';
import type { Field } from './field.ts';
import { isLabel, LONGEST_LABEL } from './label.ts';
import { decimalsIn, placeOfCell, placeOfRow, type TableHead } from './place.ts';
import { DEFAULT_UNIT, type Dimension, isValue, notAValue, readCoordinate, readQuantity, type ValueOf } from './quantity.ts';
import type { Row } from './row.ts';

/** Reads the cells of one row by meaning and gathers every fault of the row, not the first. */
export class RowReader<K extends string> {
  readonly notices: Notice[] = [];
  readonly place: Place;

  constructor(
    private readonly table: TableHead,
    private readonly columns: Columns<K>,
    private readonly meanings: Readonly<Record<K, Field>>,
    private readonly units: 'metric' | 'US',
    private readonly row: Row,
  ) {
    this.place = placeOfRow(table, row.row);
  }

  /** The cell as text; `undefined` when the column or its content is missing. A formula is a fault. */
  text(key: K): string | undefined {
    const cell = this.cell(key);
    if (cell === undefined) return undefined;
    if (isValue(cell)) return cell;
    this.fault(notAValue(cell, this.at(key, cell)));
    return undefined;
  }

  /** Is anything written there? */
  has(key: K): boolean {
    return this.cell(key) !== undefined;
  }

  required(key: K): string | undefined {
    const cell = this.text(key);
    if (cell === undefined && !this.has(key)) this.fault(notice('cell-empty', { wanted: this.meanings[key].says }, this.at(key, '')));
    return cell;
  }

  /** A text that the log keeps as a label. */
  label(key: K): string | undefined {
    const cell = this.text(key);
    if (cell === undefined || isLabel(cell)) return cell;
    this.fault(notice('label-too-long', { most: LONGEST_LABEL }, this.at(key, cell)));
    return undefined;
  }

  requiredLabel(key: K): string | undefined {
    return this.has(key) ? this.label(key) : this.required(key);
  }

  quantity<D extends Dimension>(key: K, dimension: D): ValueOf[D] | undefined {
    const cell = this.cell(key);
    if (cell === undefined) return undefined;
    const unit = this.columns.at.get(key)?.unit ?? DEFAULT_UNIT[this.units][dimension];
    return this.take(
      readQuantity(cell, dimension, unit, this.at(key, cell), decimalsIn(this.table, this.row, this.columns.at.get(key)?.index)),
    );
  }

  /** A length that may be zero or negative: a place beside an origin. */
  coordinate(key: K): Millimetre | undefined {
    const cell = this.cell(key);
    if (cell === undefined) return undefined;
    const unit = this.columns.at.get(key)?.unit ?? DEFAULT_UNIT[this.units].length;
    return this.take(readCoordinate(cell, unit, this.at(key, cell), decimalsIn(this.table, this.row, this.columns.at.get(key)?.index)));
  }

  /** A word out of a fixed list, by any of its spellings; `bare` takes off what may stand around it. */
  word<W extends string>(key: K, words: Readonly<Record<W, readonly string[]>>, bare = (text: string) => text): W | undefined {
    const cell = this.text(key);
    if (cell === undefined) return undefined;
    const wanted = bare(cell).toLowerCase().trim();
    for (const word of Object.keys(words) as W[]) if (word.toLowerCase() === wanted || words[word].includes(wanted)) return word;
    this.fault(notice('word-unknown', { wanted: Object.keys(words).join(', ') }, this.at(key, cell)));
    return undefined;
  }

  take<T>(outcome: Outcome<T>): T | undefined {
    if (outcome.ok) return outcome.value;
    this.notices.push(...outcome.notices);
    return undefined;
  }

  fault(one: Notice): void {
    this.notices.push(one);
  }

  at(key: K, read: string): Place {
    return this.places()(key, read);
  }

  /** Says where a cell of this row is, long after its cells are gone. */
  places(): (key: K, read: string) => Place {
    const { table, columns, meanings } = this;
    const { row } = this.row;
    return (key, read) => {
      const column = columns.at.get(key);
      return placeOfCell(table, row, column?.heading ?? meanings[key].says, read, column?.index);
    };
  }

  private cell(key: K): string | undefined {
    const column = this.columns.at.get(key);
    const cell = column === undefined ? undefined : this.row.cells[column.index]?.trim();
    return cell === undefined || cell === '' || cell === '-' || cell === '–' ? undefined : cell;
  }
}
