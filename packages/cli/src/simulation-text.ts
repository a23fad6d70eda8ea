import type { Chance, NotSimulated, Plan, SimulationResult } from '@clampwright/core';
import { textTable } from './text-table.ts';

/** What a simulation says, for a terminal: the chance of a bolt outside its window, and how the worst bolts lie. */
export function simulationText(
  plan: Plan,
  { runs, asked, outside, minutes, energy, pulls, joints, notSimulated }: SimulationResult,
): string {
  const stopped = runs < asked.runs ? `, stopped before the ${asked.runs} asked for` : '';
  const parts = [
    `${plan.job.title} · ${plan.job.site} · ${plan.job.workDate}`,
    `${runs} runs from seed ${asked.seed}${stopped}: a bolt outside its window in ${chance(outside)} of them`,
    `a run takes ${hours(minutes)} at the tool, ${pulls.toFixed(0)} pulls, ${(energy / 1000).toFixed(1)} kJ of work on the nuts`,
    textTable(
      ['joint', 'bolts', 'outside', 'by mistake', 'embedded', 'lowest bolt', 'highest bolt', 'minutes', 'kJ'],
      joints.map((joint) => [
        joint.tag,
        String(joint.bolts),
        chance(joint.outside),
        joint.outside.value > 0 ? `${(100 * joint.byMistake).toFixed(0)} %` : '',
        `${(100 * joint.outsideEmbedded.value).toFixed(1)} %`,
        spread(joint.lowest),
        spread(joint.highest),
        joint.minutes.toFixed(0),
        joint.energy > 0 ? (joint.energy / 1000).toFixed(1) : '',
      ]),
    ),
    `${KEY}\n  Mistakes a pull: ${Object.entries(asked.rates)
      .map(([name, rate]) => `${name} ${rate}`)
      .join(', ')}. Own estimates unless --rate gives yours.`,
  ];
  if (notSimulated.length > 0) parts.push(`Not played\n${notSimulated.map(({ tag, why }) => `  ${tag}: ${WHY[why]}`).join('\n')}`);
  return `${parts.join('\n\n')}\n`;
}

const KEY = `  Lowest and highest bolt of a run in % of its target: median (from the 5 % to the 95 % of runs). Embedded: the chance after
  the surfaces have embedded (VDI 2230 guide values). A chance is given with its 95 % interval.`;

const WHY: Readonly<Record<NotSimulated['why'], string>> = {
  stops: 'its plan stops',
  'no set torque': 'it begins from snug or ends by spline or washer: no set torque says what it leaves',
  'rotation unknown': 'it ends at an angle, and the clamped thickness is not known',
};

const percent = (value: number) => (100 * value).toFixed(value > 0.1 ? 0 : 1);
const chance = ({ value, low, high }: Chance) => `${percent(value)} % (${percent(low)}–${percent(high)})`;
const spread = ({ p5, p50, p95 }: { readonly p5: number; readonly p50: number; readonly p95: number }) =>
  `${(100 * p50).toFixed(0)} (${(100 * p5).toFixed(0)}–${(100 * p95).toFixed(0)})`;
const hours = (minutes: number) => (minutes < 90 ? `${minutes.toFixed(0)} min` : `${(minutes / 60).toFixed(1)} h`);
