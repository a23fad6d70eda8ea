import { type Joint, notice } from '@clampwright/core';
import type { StandardFlange } from './flange-text.ts';
import { LARGEST_JOINT } from './positions.ts';
import type { RowReader } from './row-reader.ts';
import { stated } from './stated.ts';
import type { JointColumn } from './tables/joint-list.ts';
import { ZONES, zoneText } from './zone.ts';

/** What a row says about its joint as a whole, by column; what it leaves open is absent. */
export type JointSays = Partial<
  Pick<
    Joint,
    | 'title'
    | 'rule'
    | 'edition'
    | 'tools'
    | 'toolsAtOnce'
    | 'sequence'
    | 'flange'
    | 'pressure'
    | 'permit'
    | 'zone'
    | 'hotWorkPermit'
    | 'gasTest'
  > &
    NonNullable<Joint['datum']> &
    Joint['access']
>;

type Reader = RowReader<JointColumn>;

export const YES_NO = {
  yes: ['y', 'x', 'true', '1', 'ja', 'j', 'wahr'],
  no: ['n', 'false', '0', 'nein', 'falsch'],
} as const;
const DIRECTIONS = {
  clockwise: ['cw', 'right', 'im uhrzeigersinn', 'rechts', 'uhrzeigersinn'],
  'counter-clockwise': ['ccw', 'anticlockwise', 'counterclockwise', 'gegen den uhrzeigersinn', 'links', 'gegenuhrzeigersinn'],
} as const;

/** Reads the columns that belong to the joint. */
export function jointSays(reader: Reader, flange: StandardFlange | undefined): JointSays {
  const tools = reader
    .text('tools')
    ?.split(/[,;]/)
    .map((serial) => serial.trim())
    .filter(Boolean);
  const atOnce = reader.word('toolsAtOnce', { 1: [], 2: [], 4: [] });
  const pressure = reader.word('pressure', YES_NO);
  return stated({
    title: reader.text('title'),
    rule: reader.text('rule')?.toLowerCase(),
    edition: reader.text('edition'),
    tools: tools && tools.length > 0 ? tools : undefined,
    toolsAtOnce: atOnce === undefined ? undefined : Number(atOnce),
    sequence: sequenceOf(reader),
    flange: flange?.name,
    pressure: pressure === undefined ? undefined : pressure === 'yes',
    permit: reader.label('permit'),
    zone: reader.word('zone', ZONES, zoneText),
    hotWorkPermit: reader.text('hotWorkPermit'),
    gasTest: reader.text('gasTest'),
    boltOne: reader.text('boltOne'),
    direction: reader.word('direction', DIRECTIONS),
    viewedFrom: reader.text('viewedFrom'),
    reactionPoint: reader.text('reactionPoint'),
    reactionLimit: reader.quantity('reactionLimit', 'force'),
    wall: reader.quantity('wall', 'length'),
  });
}

function sequenceOf(reader: Reader): number[] | undefined {
  const text = reader.text('sequence');
  if (text === undefined) return undefined;
  const order = text
    .split(/[\s,;]+/)
    .filter(Boolean)
    .map(Number);
  if (order.length <= LARGEST_JOINT && order.every((bolt) => Number.isInteger(bolt) && bolt > 0)) return order;
  reader.fault(notice('positions-unreadable', {}, reader.at('sequence', text)));
  return undefined;
}
