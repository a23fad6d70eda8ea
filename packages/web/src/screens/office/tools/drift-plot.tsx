import {
  type CivilDate,
  daysBetween,
  driftOf,
  type NewtonMillimetre,
  relativeDeviation,
  type SettingChart,
  torqueAt,
} from '@clampwright/core';
import type { ToldCertificate } from '@clampwright/record';
import type { StoreTool } from '../../../job/store-tools.ts';
import { useOffice } from '../../../language/office-speech.tsx';
import { useTrade } from '../../../language/speech.tsx';
import { Soft } from '../../../ui/page.tsx';
import { HeightRules } from './height-rules.tsx';
import { ticksOf } from './ticks.ts';
import own from './tools.module.css';

const WIDE = 720;
const TALL = 220;
const LEFT = 56;
const FOOT = 30;

interface DriftProps {
  readonly serial: string;
  readonly checks: StoreTool['checks'];
  readonly certificates: readonly ToldCertificate[];
  readonly chart: SettingChart;
}

/** Every daily check that was made at a setting of the chart: how far the reading was off, day by day, and where that is going. */
export function DriftPlot({ serial, checks, certificates, chart }: DriftProps) {
  const say = useOffice();
  const { figure } = useTrade();
  const read = checks.flatMap(({ mention, setting, passed, readingNewtonMillimetre }) => {
    const expected = torqueAt(chart, setting);
    return expected === undefined || readingNewtonMillimetre === undefined
      ? []
      : [{ mention, setting, passed, deviation: relativeDeviation(expected, readingNewtonMillimetre as NewtonMillimetre) }];
  });
  if (read.length === 0) return <Soft>{say('store.drift-none')}</Soft>;
  const first = read.map(({ mention }) => mention.on).sort()[0] as CivilDate;
  const points = read.map((one) => ({ ...one, day: daysBetween(first, one.mention.on as CivilDate) }));
  const days = Math.max(7, ...points.map(({ day }) => day));
  const reach = Math.max(1.5 * chart.repeatability, ...points.map(({ deviation }) => Math.abs(deviation) * 1.15));
  const x = (day: number) => LEFT + 10 + (day / days) * (WIDE - LEFT - 30);
  const y = (share: number) => (TALL - FOOT) / 2 - (share / reach) * ((TALL - FOOT) / 2 - 8);
  const drift = driftOf(points);
  const percent = (share: number) => `${figure(100 * share, 1)} %`;
  const calibrated = certificates
    .map(({ mention, number }) => ({ number, day: daysBetween(first, mention.on as CivilDate) }))
    .filter(({ day }) => day >= 0 && day <= days);
  return (
    <figure>
      <svg
        viewBox={`0 0 ${WIDE} ${TALL}`}
        role="img"
        aria-label={say('store.drift-of', { serial, count: points.length, last: percent(points.at(-1)!.deviation) })}
        className={own.curve}
      >
        <rect
          x={LEFT}
          width={WIDE - LEFT - 10}
          y={y(chart.repeatability)}
          height={y(-chart.repeatability) - y(chart.repeatability)}
          className={own.band}
        />
        <HeightRules ticks={ticksOf(-reach, reach, 6)} y={y} from={LEFT} to={WIDE - 10} says={percent} axis={0} />
        {calibrated.map(({ number, day }) => (
          <line key={number} x1={x(day)} x2={x(day)} y1="4" y2={TALL - FOOT} className={own.mean}>
            <title>{number}</title>
          </line>
        ))}
        {drift ? <line x1={x(0)} x2={x(days)} y1={y(drift.at(0))} y2={y(drift.at(days))} className={own.trend} /> : null}
        {points.map(({ mention, day, deviation, passed }) => (
          <circle key={mention.entry} cx={x(day)} cy={y(deviation)} r="4.5" className={own.dot} data-failed={passed ? undefined : ''} />
        ))}
        <text x={x(0)} y={TALL - 8}>
          {first}
        </text>
        <text x={x(days)} y={TALL - 8} textAnchor="end">
          {points.at(-1)!.mention.on}
        </text>
      </svg>
      <figcaption>
        {say('store.drift', { limit: percent(chart.repeatability) })}{' '}
        {drift
          ? say(drift.low > 0 || drift.high < 0 ? 'store.drifts' : 'store.drifts-not', {
              slope: percent(30 * drift.slope),
              low: percent(30 * drift.low),
              high: percent(30 * drift.high),
            })
          : say('store.drift-few')}
      </figcaption>
    </figure>
  );
}
