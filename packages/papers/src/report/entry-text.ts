import type { Param } from '@clampwright/core';
import { type BodyOf, type Envelope, type KindName, readableKind } from '@clampwright/record';
import type { Words } from '@clampwright/words';
import { positionsText } from '../page/spoken.ts';
import { type Names, short } from './names.ts';

type Params = Readonly<Record<string, Param>>;
interface Said {
  readonly params: Params;
  /** what else the entry carries, where it does */
  readonly more?: readonly (string | undefined)[];
}

const yes = (passed: boolean) => (passed ? 'yes' : 'no');
const angle = (milli: number | undefined) => (milli === undefined ? undefined : `${(milli / 1000).toFixed(0)}°`);
const torque = (value: number | undefined) => (value === undefined ? undefined : `${(value / 1000).toFixed(0)} N·m`);

/** What each kind puts into its sentence: complete, so that a new kind does not compile until it is told here, too. */
const SAID: { readonly [K in KindName]: (body: BodyOf<K>, names: Names, words: Words) => Said } = {
  'assembly-checked': (b, n) => ({
    params: { joint: n.joint(b.joint), passed: yes(b.washersRight && b.nutMarkingOutward && b.protrusionRight && b.packingRight) },
    more: [b.text],
  }),
  'batch-tightened': (b, n, w) => ({
    params: { joint: n.joint(b.joint), bolts: positionsText(b.bolts), step: w.term(b.step), end: w.term(b.end) },
    more: [b.tool, b.setting && w.settingText(b.setting)],
  }),
  'battery-changed': (b) => ({ params: { battery: b.battery, tool: b.tool } }),
  'battery-registered': (b) => ({ params: { battery: b.battery, name: b.name } }),
  'bolt-replaced': (b, n) => ({ params: { joint: n.joint(b.joint), bolts: positionsText(b.bolts), reason: b.reason } }),
  'bolt-tightened': (b, n, w) => ({
    params: { joint: n.joint(b.joint), bolt: b.bolt, step: w.term(b.step), end: w.term(b.end) },
    more: [b.tool, b.setting && w.settingText(b.setting), angle(b.angleMilliDegree)],
  }),
  'bolt-trouble': (b, n, w) => ({ params: { joint: n.joint(b.joint), bolt: b.bolt, what: w.term(b.what) }, more: [b.text] }),
  'card-issued': (b) => ({ params: { joint: b.slice.tag, number: b.number } }),
  'card-withdrawn': (b, n) => ({ params: { joint: n.joint(b.joint), number: b.number, reason: b.reason } }),
  'chart-loaded': (b) => ({ params: { tool: b.tool, certificate: b.certificate } }),
  'concession-granted': (b, n) => ({
    params: { number: b.number, text: b.text, authority: b.authority },
    more: [b.joints.map(n.joint).join(', ')],
  }),
  correction: (b) => ({ params: { entry: b.corrects.slice(0, 12), reason: b.reason } }),
  'datum-confirmed': (b, n, w) => ({
    params: { joint: n.joint(b.joint), boltOne: b.boltOne, direction: w.term(b.direction), from: b.viewedFrom },
  }),
  'device-enrolled': (b) => ({ params: { device: short(b.device), name: b.name } }),
  'device-revoked': (b, n) => ({ params: { device: n.device(b.device), reason: b.reason } }),
  'gap-read': (b, n) => ({
    params: {
      joint: n.joint(b.joint),
      positions: b.gaps.map(({ position, gapMicrometre }) => `${position}: ${gapMicrometre / 1000} mm`).join(', '),
    },
    more: [b.after],
  }),
  'gauge-read': (b) => ({ params: { battery: b.battery, bars: b.bars, of: b.of } }),
  imported: (b) => ({ params: { name: b.name }, more: [b.file.slice(0, 12), b.text] }),
  inspected: (b, n) => ({
    params: { joint: n.joint(b.joint), bolt: b.bolt, rule: b.rule, passed: yes(b.passed) },
    more: [b.tool, torque(b.torqueNewtonMillimetre), angle(b.angleMilliDegree)],
  }),
  'job-kept': (b) => ({ params: { number: b.number } }),
  'joint-signed': (b, n, w) => ({ params: { joint: n.joint(b.joint), as: w.term(b.as) } }),
  loosened: (b, n) => ({ params: { joint: n.joint(b.joint), bolts: positionsText(b.bolts) }, more: [b.reason] }),
  'lot-registered': (b) => ({ params: { name: b.name, designation: b.designation }, more: [b.certificate, b.lubricant] }),
  'nonconformance-raised': (b, n) => ({
    params: { number: b.number, text: b.text },
    more: [b.joint && n.joint(b.joint), b.bolts && positionsText(b.bolts)],
  }),
  'nonconformance-reinspected': (b) => ({ params: { id: short(b.nonconformance), passed: yes(b.passed) }, more: [b.text] }),
  'nonconformance-settled': (b, _, w) => ({
    params: { id: short(b.nonconformance), disposition: w.term(b.disposition), reason: b.reason, authority: b.authority },
  }),
  'note-written': (b, n) => ({ params: { text: b.text }, more: [b.joint && n.joint(b.joint)] }),
  'person-enrolled': (b, n, w) => ({
    params: { person: n.person(b.person), roles: b.roles.map(w.term).join(', ') },
    more: [b.qualification, b.qualifiedUntil],
  }),
  'person-revoked': (b, n) => ({ params: { person: n.person(b.person), reason: b.reason } }),
  'photo-taken': (b, n, w) => ({
    params: { photo: b.photo.slice(0, 12) },
    more: [b.joint && n.joint(b.joint), b.bolt === undefined ? undefined : w.label('sequence.bolt', { bolt: b.bolt })],
  }),
  'plan-issued': (b) => ({ params: { number: b.number, engine: b.engine } }),
  'plan-withdrawn': (b) => ({ params: { number: b.number, reason: b.reason } }),
  'point-released': (b, n, w) => ({
    params: { joint: n.joint(b.joint), point: w.term(b.point), name: b.seen === undefined ? b.name : `${b.name}: ${b.seen}` },
  }),
  'retightening-done': (b, n) => ({ params: { joint: n.joint(b.joint), moved: b.moved }, more: [b.text] }),
  'retightening-due': (b, n) => ({ params: { joint: n.joint(b.joint), due: b.due, rule: b.rule } }),
  'shift-handed-over': (b, n) => ({ params: { person: n.person(b.to) }, more: [b.text] }),
  'snug-checked': (b, n) => ({ params: { joint: n.joint(b.joint), passed: yes(b.passed) }, more: [b.text] }),
  'suitability-tested': (b, n) => ({ params: { lot: n.lot(b.lot), rule: b.rule, passed: yes(b.passed) } }),
  'tool-checked': (b, _, w) => ({
    params: { tool: b.tool, setting: w.settingText(b.setting), passed: yes(b.passed) },
    more: [torque(b.readingNewtonMillimetre), b.against],
  }),
  'tool-cut-out': (b, n, w) => ({ params: { tool: b.tool, cause: w.term(b.cause) }, more: [b.joint && n.joint(b.joint)] }),
  'tool-registered': (b) => ({ params: { tool: b.tool, name: b.name, certificate: b.certificate, due: b.due } }),
  'tool-swapped': (b, n, w) => ({
    params: { joint: n.joint(b.joint), from: b.from, to: b.to },
    more: b.settings.map(({ step, setting }) => `${w.term(step)} ${w.settingText(setting)}`),
  }),
  'tool-withdrawn': (b) => ({ params: { tool: b.tool, reason: b.reason } }),
  'valve-issued': (b) => ({ params: { joint: b.tag, number: b.number } }),
  'valve-turned': (b, n, w) => ({
    params: { joint: n.joint(b.joint), direction: w.term(b.direction), turns: b.turnsThousandth / 1000 },
    more: [b.tool, b.setting && w.settingText(b.setting)],
  }),
};

/** What an entry tells, in one line; one of a kind this version does not know is said to be that. */
export function entryText(entry: Envelope, names: Names, words: Words): string {
  const { label } = words;
  const { kind, version, body, paper } = entry;
  if (!readableKind(entry)) return label('entry.unknown', { kind, version });
  const { params, more = [] } = (SAID[kind as KindName] as (body: unknown, names: Names, words: Words) => Said)(body, names, words);
  const rest = [...more, paper && label('report.how.paper', { card: paper.card })].filter(Boolean);
  return [label(`entry.${kind as KindName}`, params), ...rest].join(' · ');
}
