import { stringify } from 'csv-stringify/sync';
import type { Bolt } from './fasteners.ts';
import type { ModelJoint } from './read-model.ts';

const HEADINGS = [
  'joint',
  'title',
  'layout',
  'bolts',
  'positions',
  'bolt no',
  'x [mm]',
  'y [mm]',
  'bolt circle [mm]',
  'spacing along [mm]',
  'spacing across [mm]',
  'size',
  'grade',
  'system',
  'bolt length [mm]',
  'clamped thickness [mm]',
] as const;
type Cells = Partial<Record<(typeof HEADINGS)[number], string | number>>;

/** Joints of a model as a joint list that `clampwright plan` reads: what was not understood stays an empty cell for a person to fill. */
export function modelJointList(joints: readonly ModelJoint[]): string {
  const rows = joints.flatMap(rowsOf);
  const used = HEADINGS.filter((heading) => ALWAYS.has(heading) || rows.some((row) => row[heading] !== undefined));
  return stringify([used, ...rows.map((row) => used.map((heading) => guarded(row[heading] ?? '')))]);
}
const ALWAYS: ReadonlySet<string> = new Set(['joint', 'size', 'grade']);

/** A name that begins like a formula would be one in a spreadsheet. */
const guarded = (cell: string | number) => (typeof cell === 'string' && /^[=+@-]/.test(cell) ? ` ${cell}` : cell);

const round = (value: number) => Math.round(value * 100) / 100;

function rowsOf(joint: ModelJoint): Cells[] {
  const { tag, bolts, layout, grip } = joint;
  const whole: Cells = {
    joint: tag,
    ...(joint.connects.length > 0 ? { title: joint.connects.join(' – ') } : {}),
    ...(grip.known ? { 'clamped thickness [mm]': round(grip.value) } : {}),
  };
  if (layout.kind === 'spots')
    return bolts.map((bolt, at) => ({
      ...whole,
      'bolt no': at + 1,
      'x [mm]': round(layout.spots[at]!.x),
      'y [mm]': round(layout.spots[at]!.y),
      ...ownOf(bolt),
    }));
  const shape: Cells =
    layout.kind === 'ring'
      ? { layout: 'ring', 'bolt circle [mm]': round(layout.circle) }
      : {
          layout: `${layout.rows}x${layout.columns}`,
          ...(layout.along === undefined ? {} : { 'spacing along [mm]': round(layout.along) }),
          ...(layout.across === undefined ? {} : { 'spacing across [mm]': round(layout.across) }),
        };
  const alike = new Map<string, { own: Cells; positions: number[] }>();
  for (const [at, bolt] of bolts.entries()) {
    const own = ownOf(bolt);
    const key = JSON.stringify(own);
    const known = alike.get(key);
    if (known) known.positions.push(at + 1);
    else alike.set(key, { own, positions: [at + 1] });
  }
  const groups = [...alike.values()];
  return groups.map(({ own, positions }) => ({
    ...whole,
    ...shape,
    ...(groups.length === 1 ? { bolts: bolts.length } : { positions: spans(positions) }),
    ...own,
  }));
}

const ownOf = ({ size, grade, system, length }: Bolt): Cells => ({
  ...(size === undefined ? {} : { size }),
  ...(grade === undefined ? {} : { grade }),
  ...(system === undefined ? {} : { system }),
  ...(length === undefined ? {} : { 'bolt length [mm]': round(length) }),
});

/** `1-4, 7-7`: a single number would be a count. */
function spans(positions: readonly number[]): string {
  const found: [number, number][] = [];
  for (const one of positions) {
    const last = found.at(-1);
    if (last && last[1] === one - 1) last[1] = one;
    else found.push([one, one]);
  }
  return found.map(([from, to]) => `${from}-${to}`).join(', ');
}
