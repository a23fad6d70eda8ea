import { findGrade, findThread, notice, type Outcome, type Place, type Point, type Subgroup } from '@clampwright/core';
import { readFlange, type StandardFlange, standardSizeFits } from './flange-text.ts';
import { type JointSays, jointSays } from './joint-says.ts';
import { type LayoutSays, layoutSays } from './layout-cells.ts';
import { LARGEST_JOINT, readPositions } from './positions.ts';
import type { RowReader } from './row-reader.ts';
import { subgroupOf } from './subgroup-cells.ts';
import type { JointColumn } from './tables/joint-list.ts';

/** One row of the joint list, read and not yet joined with the other rows of its joint. An empty cell says nothing. */
export interface JointRow {
  readonly tag: string;
  readonly says: JointSays & LayoutSays;
  readonly subgroup: Omit<Subgroup, 'id' | 'positions'>;
  /** how many bolts the row gives: those of the joint, or those of its subgroup */
  readonly count?: number;
  readonly positions?: readonly number[];
  /** the row is one bolt of its joint; where it is, if the list says so */
  readonly single?: boolean;
  readonly spot?: Point;
  readonly place: Place;
  readonly at: (column: JointColumn, read: string) => Place;
}

type Reader = RowReader<JointColumn>;

/** Reads one row; faults gather in the reader, and a row with a fault gives no joint. */
export function readJointRow(reader: Reader): JointRow | undefined {
  const tag = reader.requiredLabel('tag');
  const grade = reader.required('grade');
  const flange = flangeOf(reader);
  const size = sizeOf(reader, flange);
  const count = countOf(reader, flange);
  const bolt = boltOf(reader);
  const positions = bolt === undefined ? positionsOf(reader) : [bolt];
  const spot = spotOf(reader);
  const says = { ...jointSays(reader, flange), ...layoutSays(reader, flange, count) };
  const subgroup = subgroupOf(reader, size ?? '', grade ?? '');
  if (reader.notices.length > 0 || tag === undefined) {
    sayWhatThePlanWould(reader, 'size', size, findThread);
    sayWhatThePlanWould(reader, 'grade', grade, findGrade);
    return undefined;
  }
  return {
    tag,
    says,
    subgroup,
    place: reader.place,
    at: reader.places(),
    ...(count === undefined ? {} : { count }),
    ...(positions === undefined ? {} : { positions }),
    ...(bolt === undefined ? {} : { single: true }),
    ...(spot === undefined ? {} : { spot }),
  };
}

/** A row that is left out reaches no plan: what that would refuse is said here, so that all faults of the row are known at once. */
function sayWhatThePlanWould(
  reader: Reader,
  column: 'size' | 'grade',
  text: string | undefined,
  find: (text: string) => Outcome<unknown>,
): void {
  const found = text === undefined ? undefined : find(text);
  if (found && !found.ok) for (const one of found.notices) reader.fault({ ...one, place: reader.at(column, text!) });
}

function flangeOf(reader: Reader): StandardFlange | undefined {
  const text = reader.text('flange');
  return text === undefined ? undefined : reader.take(readFlange(text, reader.at('flange', text)));
}

function sizeOf(reader: Reader, flange: StandardFlange | undefined): string | undefined {
  const size = reader.has('flange') ? reader.text('size') : reader.required('size');
  if (size === undefined) return flange?.size;
  if (flange && !standardSizeFits(flange, size)) {
    const params = { flange: flange.name, field: 'bolt size', table: flange.size, given: size };
    reader.fault(notice('flange-contradicts', params, reader.at('size', size)));
  }
  return size;
}

function countOf(reader: Reader, flange: StandardFlange | undefined): number | undefined {
  const text = reader.text('bolts');
  if (text === undefined) return flange?.boltCount;
  const count = /^\d{1,6}$/.test(text) ? Number(text) : 0;
  if (count < 1 || count > LARGEST_JOINT) {
    reader.fault(notice('number-absurd', { wanted: 'a whole number of bolts', largest: String(LARGEST_JOINT) }, reader.at('bolts', text)));
    return undefined;
  }
  if (flange && flange.boltCount !== count) {
    const params = { flange: flange.name, field: 'bolts', table: String(flange.boltCount), given: text };
    reader.fault(notice('flange-contradicts', params, reader.at('bolts', text)));
  }
  return count;
}

function positionsOf(reader: Reader): number[] | undefined {
  const text = reader.text('positions');
  if (text === undefined) return undefined;
  const positions = readPositions(text);
  if (!positions || positions.length === 0) reader.fault(notice('positions-unreadable', {}, reader.at('positions', text)));
  return positions;
}

function boltOf(reader: Reader): number | undefined {
  const text = reader.text('bolt');
  if (text === undefined) return undefined;
  const bolt = /^\d{1,6}$/.test(text) ? Number(text) : 0;
  if (bolt >= 1 && bolt <= LARGEST_JOINT) return bolt;
  reader.fault(notice('number-absurd', { wanted: 'the number of one bolt', largest: String(LARGEST_JOINT) }, reader.at('bolt', text)));
  return undefined;
}

function spotOf(reader: Reader): Point | undefined {
  const [x, y] = [reader.coordinate('x'), reader.coordinate('y')];
  return x === undefined || y === undefined ? undefined : { x, y };
}
