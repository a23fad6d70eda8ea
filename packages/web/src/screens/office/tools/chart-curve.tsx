import { gearOf, gears, type NewtonMillimetre, type SettingChart } from '@clampwright/core';
import { useOffice } from '../../../language/office-speech.tsx';
import { useTrade } from '../../../language/speech.tsx';
import { HeightRules } from './height-rules.tsx';
import { ticksOf } from './ticks.ts';
import own from './tools.module.css';

const WIDE = 620;
const TALL = 260;
const LEFT = 52;
const FOOT = 30;

interface CurveProps {
  readonly chart: SettingChart;
  readonly serial: string;
}

/** The chart as measured: torque over the last label of its settings, a line for each gear. Nothing between the points is said. */
export function ChartCurve({ chart, serial }: CurveProps) {
  const say = useOffice();
  const { figure } = useTrade();
  const lines = gears(chart);
  const newtonMetre = (torque: NewtonMillimetre) => torque / 1000;
  const place = (label: string, at: number) => Number(label.replace(',', '.')) || at + 1;
  const points = lines.map((gear) =>
    gear.map((one, at) => ({ x: place(one.labels.at(-1)!, at), y: newtonMetre(one.torque), loosening: one.looseningOnly })),
  );
  const all = points.flat();
  if (all.length === 0) return null;
  const [low, high] = [Math.min(...all.map(({ x }) => x)), Math.max(...all.map(({ x }) => x))];
  const most = Math.max(...all.map(({ y }) => y)) * 1.08;
  const x = (value: number) => LEFT + ((value - low) / Math.max(1e-9, high - low)) * (WIDE - LEFT - 70);
  const y = (value: number) => TALL - FOOT - (value / most) * (TALL - FOOT - 8);
  return (
    <figure>
      <svg
        viewBox={`0 0 ${WIDE} ${TALL}`}
        role="img"
        aria-label={say('store.curve-of', {
          serial,
          low: figure(Math.min(...all.map((one) => one.y)), 0),
          high: figure(Math.max(...all.map((one) => one.y)), 0),
        })}
        className={own.curve}
      >
        <HeightRules ticks={ticksOf(0, most, 5)} y={y} from={LEFT} to={WIDE - 66} says={(tick) => figure(tick, 0)} />
        {ticksOf(low, high, 10).map((tick) => (
          <text key={tick} x={x(tick)} y={TALL - 10} textAnchor="middle">
            {figure(tick, Number.isInteger(tick) ? 0 : 1)}
          </text>
        ))}
        {points.map((line, at) => (
          <g key={gearOf(lines[at]![0]!)}>
            <polyline points={line.map((one) => `${x(one.x)},${y(one.y)}`).join(' ')} className={own.line} data-gear={at % 4} />
            {line.map((one) => (
              <circle key={one.x} cx={x(one.x)} cy={y(one.y)} r="3" className={own.point} data-loosening={one.loosening ? '' : undefined} />
            ))}
            <text x={x(line.at(-1)!.x) + 8} y={y(line.at(-1)!.y) + 4}>
              {gearOf(lines[at]![0]!) === '' ? '' : `${chart.scales[0]?.name ?? ''} ${gearOf(lines[at]![0]!)}`}
            </text>
          </g>
        ))}
      </svg>
      <figcaption>
        {say('store.curve', { scale: [chart.scales.at(-1)?.name, chart.scales.at(-1)?.unit].filter(Boolean).join(', ') })}
      </figcaption>
    </figure>
  );
}
