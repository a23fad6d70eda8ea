import { GASKET_KINDS } from '@clampwright/core';
import type { Path } from './use-yaml.ts';
import type { YamlField } from './yaml-form.tsx';
import type { YamlColumn } from './yaml-table.tsx';

const TOOL_KINDS = ['battery', 'electric', 'pneumatic', 'hydraulic', 'torque multiplier', 'click wrench'] as const;
const ZONES = ['none', '0', '1', '2', '20', '21', '22'] as const;

export const JOB: readonly YamlField[] = [
  { path: ['title'], label: 'define.job-title' },
  { path: ['site'], label: 'define.site' },
  { path: ['work-date'], label: 'define.work-date', hint: 'define.work-date-hint', kind: 'date' },
  {
    path: ['units'],
    label: 'define.units',
    only: true,
    choices: ['metric', 'US'],
    named: (one) => `define.choice-${one as 'metric' | 'US'}`,
  },
  {
    path: ['execution-class'],
    label: 'define.execution-class',
    hint: 'define.execution-class-hint',
    only: true,
    choices: ['EXC1', 'EXC2', 'EXC3', 'EXC4'],
  },
  { path: ['crews'], label: 'define.crews' },
  { path: ['shift-hours'], label: 'define.shift-hours' },
];

export const CONDITIONS: readonly YamlField[] = [
  { path: ['conditions', 'wet'], label: 'define.wet', kind: 'yes' },
  { path: ['conditions', 'at-height'], label: 'define.at-height', kind: 'yes' },
  { path: ['conditions', 'zone'], label: 'define.zone', only: true, choices: ZONES },
];

interface ListOf {
  readonly path: Path;
  readonly columns: readonly YamlColumn[];
}

export const PEOPLE: ListOf = {
  path: ['people'],
  columns: [
    { key: 'name', label: 'define.person', width: 200 },
    { key: 'role', label: 'define.role', width: 170, choices: ['operator', 'second person', 'inspector', 'supervisor'] },
    { key: 'qualification', label: 'define.qualification', width: 220 },
    { key: 'qualified-until', label: 'define.qualified-until', width: 150 },
  ],
};

export const LOTS: ListOf = {
  path: ['lots'],
  columns: [
    { key: 'id', label: 'define.lot', width: 130 },
    { key: 'k-class', label: 'define.k-class', width: 90, choices: ['K0', 'K1', 'K2'] },
    { key: 'k', label: 'define.k', width: 100 },
    { key: 'variation', label: 'define.variation', width: 110 },
    { key: 'tested', label: 'define.tested', width: 90, yes: true },
    { key: 'source', label: 'define.source', width: 230 },
    { key: 'suitability-test', label: 'define.suitability-test', width: 150 },
    { key: 'thread-friction', label: 'define.thread-friction', width: 120 },
    { key: 'bearing-friction', label: 'define.bearing-friction', width: 120 },
    { key: 'bearing-diameter', label: 'define.bearing-diameter', width: 130 },
    { key: 'tested-turning', label: 'define.tested-turning', width: 120, choices: ['nut', 'head'] },
    { key: 'verified-torque', label: 'define.verified-torque', width: 140 },
    { key: 'lubricant', label: 'define.lubricant', width: 150 },
    { key: 'failed', label: 'define.failed', width: 90, yes: true },
  ],
};

export const BATTERIES: ListOf = {
  path: ['batteries'],
  columns: [
    { key: 'serial', label: 'define.serial', width: 150 },
    { key: 'volts', label: 'define.volts', width: 80 },
    { key: 'ampere-hours', label: 'define.ampere-hours', width: 110 },
    { key: 'health', label: 'define.health', width: 110 },
    { key: 'temperature', label: 'define.temperature', width: 130 },
    { key: 'lit', label: 'define.lit', width: 110, choices: ['0', '1', '2', '3', '4'] },
    { key: 'never-charged', label: 'define.never-charged', width: 140, yes: true },
  ],
};

export const CHARGER: readonly YamlField[] = [
  { path: ['charger', 'watts'], label: 'define.watts' },
  { path: ['charger', 'taper-minutes'], label: 'define.taper' },
  { path: ['charger', 'vehicle-fuse'], label: 'define.vehicle-fuse' },
];

export const TOOL: readonly YamlField[] = [
  { path: ['serial'], label: 'define.serial' },
  { path: ['name'], label: 'define.tool-name' },
  {
    path: ['kind'],
    label: 'define.kind',
    only: true,
    choices: TOOL_KINDS,
    named: (one) => `store.kind-${one as (typeof TOOL_KINDS)[number]}`,
  },
  { path: ['arm'], label: 'define.arm', hint: 'define.arm-hint' },
  { path: ['arm-rating'], label: 'define.arm-rating' },
  { path: ['repeatability'], label: 'define.repeatability', hint: 'define.repeatability-hint' },
  { path: ['interpolation'], label: 'define.interpolation', kind: 'yes' },
];

export const CERTIFICATE: readonly YamlField[] = [
  { path: ['certificate', 'number'], label: 'define.certificate-number' },
  { path: ['certificate', 'serial'], label: 'define.certificate-serial' },
  { path: ['certificate', 'calibrated'], label: 'define.calibrated', kind: 'date' },
  { path: ['certificate', 'due'], label: 'define.due', kind: 'date' },
  { path: ['certificate', 'uncertainty'], label: 'define.uncertainty', hint: 'define.uncertainty-hint' },
  {
    path: ['certificate', 'joint-rate'],
    label: 'define.joint-rate',
    only: true,
    choices: ['hard', 'soft'],
    named: (one) => `define.choice-${one as 'hard' | 'soft'}`,
  },
];

export const SOCKETS: ListOf = {
  path: ['sockets'],
  columns: [
    { key: 'across-flats', label: 'define.across-flats', width: 180 },
    { key: 'outer-diameter', label: 'define.outer-diameter', width: 180 },
  ],
};

/** What the joints of one entry clamp, by its kind. */
export const MEMBERS = {
  gasket: [
    { path: ['gasket', 'kind'], label: 'define.gasket-kind', choices: GASKET_KINDS },
    { path: ['gasket', 'thickness'], label: 'define.thickness' },
    { path: ['gasket', 'modulus'], label: 'define.modulus' },
    { path: ['gasket', 'unloading-modulus'], label: 'define.unloading' },
    { path: ['gasket', 'inner'], label: 'define.inner' },
    { path: ['gasket', 'outer'], label: 'define.outer' },
    { path: ['gasket', 'least-stress'], label: 'define.least-stress' },
    { path: ['gasket', 'greatest-stress'], label: 'define.greatest-stress' },
  ],
  ring: [
    { path: ['ring', 'inner'], label: 'define.inner' },
    { path: ['ring', 'outer'], label: 'define.outer' },
    { path: ['ring', 'thickness'], label: 'define.thickness' },
    { path: ['ring', 'wall'], label: 'define.wall' },
    {
      path: ['ring', 'wall-side'],
      label: 'define.wall-side',
      only: true,
      choices: ['inside', 'outside'],
      named: (one) => `define.choice-${one as 'inside' | 'outside'}`,
    },
    { path: ['ring', 'hub-outer'], label: 'define.hub-outer' },
    { path: ['ring', 'hub-length'], label: 'define.hub-length' },
    { path: ['ring', 'land', 'inner'], label: 'define.land-inner' },
    { path: ['ring', 'land', 'outer'], label: 'define.land-outer' },
    { path: ['ring', 'land', 'height'], label: 'define.land-height' },
  ],
  plates: [
    { path: ['plates', 'width'], label: 'define.width' },
    { path: ['plates', 'height'], label: 'define.height' },
    { path: ['plates', 'thickness'], label: 'define.thickness' },
    {
      path: ['plates', 'support'],
      label: 'define.support',
      only: true,
      choices: ['mirrored', 'ground'],
      named: (one) => `define.choice-${one as 'mirrored' | 'ground'}`,
    },
    { path: ['plates', 'bed-thickness'], label: 'define.bed-thickness' },
    { path: ['plates', 'bed-modulus'], label: 'define.bed-modulus' },
  ],
  matrix: [
    { path: ['matrix'], label: 'define.matrix' },
    { path: ['matrix-source'], label: 'define.source' },
  ],
} as const satisfies Readonly<Record<string, readonly YamlField[]>>;
export type MemberKind = keyof typeof MEMBERS;

export const MEMBERS_HEAD: readonly YamlField[] = [
  { path: ['joints'], label: 'define.for-joints', kind: 'list' },
  { path: ['evenness'], label: 'define.evenness', hint: 'define.evenness-hint' },
  { path: ['greatest-bolt-force'], label: 'define.greatest-force', hint: 'define.greatest-force-hint' },
];
