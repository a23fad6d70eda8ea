import type { Chance, Distribution, SimulatedOutcome, SimulationResult } from '@clampwright/core';
import { Link } from 'wouter';
import { useOffice } from '../../../language/office-speech.tsx';
import { useTrade } from '../../../language/speech.tsx';
import { Facts, Section, Soft } from '../../../ui/page.tsx';
import css from './simulate.module.css';

/** What a simulation says: the chance of a bolt outside its window, and how the lowest and highest bolts lie, joint by joint. */
export function Outcome({ result, seconds }: { readonly result: SimulationResult; readonly seconds: number }) {
  const say = useOffice();
  const { figure } = useTrade();
  const { runs, asked, outside, joints, notSimulated, minutes, energy, pulls } = result;
  const percent = (value: number) => `${figure(100 * value, value > 0.1 ? 0 : 1)} %`;
  const chance = ({ value, low, high }: Chance) => say('play.chance', { value: percent(value), low: percent(low), high: percent(high) });
  const byRisk = joints.toSorted((a, b) => b.outside.value - a.outside.value);
  return (
    <>
      <Section title={say('play.result')}>
        <p className={css.chance}>{chance(outside)}</p>
        <p>{say('play.result-text', { runs, seed: asked.seed, seconds: figure(seconds, 1) })}</p>
        {runs < asked.runs ? <Soft>{say('play.stopped', { runs, asked: asked.runs })}</Soft> : null}
        <Facts
          facts={[
            [say('play.minutes'), say('play.hours', { hours: figure(minutes / 60, 1) })],
            [say('play.pulls'), figure(pulls, 0)],
            [say('play.energy'), `${figure(energy / 1000, 1)} kJ`],
          ]}
        />
      </Section>
      <Section title={say('play.joints')}>
        <Soft>{say('play.joints-text')}</Soft>
        <ul className={css.joints}>
          {byRisk.map((joint) => (
            <li key={joint.tag}>
              <div>
                <h3>
                  <Link href={`/office/plan/${encodeURIComponent(joint.tag)}`}>{joint.tag}</Link>
                </h3>
                <p>{chance(joint.outside)}</p>
                {joint.outside.value > 0 ? <Soft>{say('play.by-mistake', { share: percent(joint.byMistake) })}</Soft> : null}
                <Soft>{say('play.embedded', { chance: percent(joint.outsideEmbedded.value) })}</Soft>
              </div>
              <Bolts joint={joint} percent={percent} />
            </li>
          ))}
        </ul>
        {notSimulated.length > 0 ? (
          <ul className={css.not}>
            {notSimulated.map(({ tag, why }) => (
              <li key={tag}>
                <strong>{tag}</strong> {say(`play.not-${why}`)}
              </li>
            ))}
          </ul>
        ) : null}
      </Section>
    </>
  );
}

const WIDTH = 520;
const HEIGHT = 96;
const FOOT = 22;
/** Bins of a distribution are half per cents of the target. */
const BIN = 1 / 200;

/** Lowest and highest bolt of every run as a share of the target: two humps and the target's line between them. */
function Bolts({ joint, percent }: { readonly joint: SimulatedOutcome; readonly percent: (value: number) => string }) {
  const say = useOffice();
  const { lowest, highest } = joint;
  const from = Math.min(0.9, lowest.from * BIN, lowest.p5) - 0.03;
  const to = Math.max(1.1, (highest.from + highest.counts.length) * BIN) + 0.03;
  const x = (share: number) => ((share - from) / (to - from)) * WIDTH;
  const most = Math.max(...lowest.counts, ...highest.counts, 1);
  const base = HEIGHT - FOOT;
  const hump = ({ from: first, counts }: Distribution) =>
    `M${x(first * BIN)} ${base}${counts.map((count, at) => `V${base - (count / most) * (base - 4)}H${x((first + at + 1) * BIN)}`).join('')}V${base}Z`;
  const ticks = [0.5, 0.6, 0.7, 0.8, 0.9, 1, 1.1, 1.2, 1.3, 1.4, 1.5].filter((one) => one > from && one < to);
  return (
    <figure>
      <svg
        viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
        role="img"
        aria-label={say('play.plot', { tag: joint.tag, low: percent(lowest.p50), high: percent(highest.p50) })}
        className={css.plot}
      >
        <path d={hump(lowest)} className={css.low} />
        <path d={hump(highest)} className={css.high} />
        <line x1={x(1)} x2={x(1)} y1="2" y2={base} className={css.target} />
        <line x1="0" x2={WIDTH} y1={base} y2={base} className={css.axis} />
        {ticks.map((one) => (
          <text key={one} x={x(one)} y={HEIGHT - 6}>
            {Math.round(one * 100)} %
          </text>
        ))}
      </svg>
      <figcaption>
        {say('play.humps', {
          low: `${percent(lowest.p50)} (${percent(lowest.p5)}–${percent(lowest.p95)})`,
          high: `${percent(highest.p50)} (${percent(highest.p5)}–${percent(highest.p95)})`,
        })}
      </figcaption>
    </figure>
  );
}
