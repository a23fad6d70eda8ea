import type { GivenFigures, Subgroup } from '@clampwright/core';
import { YES_NO } from './joint-says.ts';
import { readFriction } from './read-friction.ts';
import type { RowReader } from './row-reader.ts';
import { stated } from './stated.ts';
import type { JointColumn } from './tables/joint-list.ts';

const SYSTEMS = { HV: [], HR: [], HRC: ['tc'], plain: ['sb', 'non-preloaded', 'none', 'stud', 'studs'] } as const;
const TURNED = { nut: ['mutter'], head: ['kopf', 'bolt', 'schraube', 'bolt head'] } as const;
const SLOPED = { 0: ['none', 'keine'], 1: ['one', 'eine'], 2: ['both', 'beide'] } as const;
const FRICTION_COLUMN = { k: 'k', thread: 'threadFriction', bearing: 'bearingFriction' } as const;

/** Reads the columns that belong to the row's own bolts. */
export function subgroupOf(reader: RowReader<JointColumn>, size: string, grade: string): Omit<Subgroup, 'id' | 'positions'> {
  const cells = {
    k: reader.quantity('k', 'number'),
    thread: reader.quantity('threadFriction', 'number'),
    bearing: reader.quantity('bearingFriction', 'number'),
    bearingDiameter: reader.quantity('bearingDiameter', 'length'),
    source: reader.text('frictionSource'),
  };
  const friction = readFriction(cells, reader.place, (figure) => reader.at(FRICTION_COLUMN[figure], String(cells[figure])));
  for (const one of friction.notices) reader.fault(one);
  return {
    size,
    grade,
    system: reader.word('system', SYSTEMS) ?? 'plain',
    slopedFaces: Number(reader.word('sloped', SLOPED) ?? 0) as 0 | 1 | 2,
    turned: reader.word('turned', TURNED) ?? 'nut',
    retightened: reader.word('retightened', YES_NO) === 'yes',
    given: givenOf(reader),
    place: reader.place,
    ...stated<Pick<Subgroup, 'length' | 'clampThickness' | 'lot' | 'kClass' | 'friction'>>({
      length: reader.quantity('length', 'length'),
      clampThickness: reader.quantity('clamp', 'length'),
      lot: reader.label('lot'),
      kClass: reader.word('kClass', { K0: [], K1: [], K2: [] }),
      friction: friction.friction,
    }),
  };
}

const givenOf = (reader: RowReader<JointColumn>): GivenFigures =>
  stated<GivenFigures>({
    preload: reader.quantity('preload', 'force'),
    torque: reader.quantity('torque', 'torque'),
    boltStress: reader.quantity('boltStress', 'stress'),
  });
