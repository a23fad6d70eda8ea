import { levelOf, type Notice, notice } from '../notice/index.ts';
import { percent, torque } from '../notice/measure.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import { type NewtonMillimetre, Nmm } from '../quantity.ts';
import { sampleDeviation, sampleMean } from '../scatter/sample.ts';
import { relativeDeviation } from './deviation.ts';
import { type ToleranceInterval, toleranceInterval } from './tolerance-interval.ts';

/** Shots of a tool at one setting on a transducer or a bolt calibrator. */
export interface ShotsAtSetting {
  /** torque the chart gives for the setting */
  readonly expected: NewtonMillimetre;
  readonly readings: readonly NewtonMillimetre[];
  /** limit of each shot and of the mean, share */
  readonly limit: number;
}

/** What a check found, and what follows from it. */
export interface CheckVerdict {
  readonly verdict: 'pass' | 'fail';
  readonly mean: NewtonMillimetre;
  /** of the mean and of the shot that is farthest off; negative: it delivers more than the chart says */
  readonly bias: number;
  readonly worst: number;
  /** standard deviation over mean; from two shots on */
  readonly repeatability?: number;
  /** holds 95 % of all shots with 95 % confidence; from three shots on */
  readonly interval?: ToleranceInterval;
  /** the tool is set aside, and every bolt since the last good check is looked at again */
  readonly quarantine: boolean;
  readonly notices: readonly Notice[];
}

/** Fewer shots than this say nothing about scatter. Common practice, no source. */
export const DAILY_SHOTS = 3;

/**
 * Daily or shift check: three shots at the working setting before work, after another pack, socket chain or gear, after a drop, and at the
 * end of the shift. Mean and each shot inside the limit, else the tool stops and every bolt since the last good check is set aside.
 *
 * Refuses readings that are not above zero, a limit outside 0 to 50 %, an empty series. Common practice, no source.
 *
 * @example
 * const check = judgeShots({ expected: Nm(800), readings: [Nm(796), Nm(803), Nm(788)], limit: 0.04 });
 * expect(check.value.verdict).toBe('pass');
 */
export function judgeShots({ expected, readings, limit }: ShotsAtSetting): Outcome<CheckVerdict> {
  const faults: Notice[] = readings.flatMap((reading, at) =>
    reading > 0 && Number.isFinite(reading) ? [] : [notice('check-reading', { shot: at + 1 })],
  );
  if (readings.length === 0) faults.push(notice('check-empty', {}));
  if (!(expected > 0) || !(limit > 0 && limit <= 0.5)) faults.push(notice('check-limit', {}));
  if (faults.length > 0) return refused(...faults);
  const mean = Nmm(sampleMean(readings));
  const off = readings.map((reading) => relativeDeviation(expected, reading));
  const worst = off.reduce((far, one) => (Math.abs(one) > Math.abs(far) ? one : far), 0);
  const bias = relativeDeviation(expected, mean);
  const fails = Math.abs(worst) > limit + 1e-12 || Math.abs(bias) > limit + 1e-12;
  const notices: Notice[] = [];
  if (fails) notices.push(notice('check-failed', { worst: percent(Math.abs(worst)), limit: percent(limit), expected: torque(expected) }));
  if (readings.length < DAILY_SHOTS) notices.push(notice('check-few-shots', { shots: readings.length, wanted: DAILY_SHOTS }));
  return done({
    verdict: fails ? 'fail' : 'pass',
    mean,
    bias,
    worst,
    ...(readings.length > 1 ? { repeatability: sampleDeviation(readings) / mean } : {}),
    ...(readings.length > 2 ? { interval: toleranceInterval(readings) } : {}),
    quarantine: notices.some(({ code }) => levelOf(code) === 'stop'),
    notices,
  });
}

/** A check that was made: when, and how it ended. */
export interface CheckMade {
  /** entry or time, rising */
  readonly at: number;
  readonly verdict: 'pass' | 'fail';
}

/**
 * Bolts to look at again after a failed check: all that the tool turned after its last good check before the failure. Without a good one:
 * all before it.
 *
 * @example
 * const made = [{ at: 1, verdict: 'pass' }, { at: 9, verdict: 'fail' }];
 * expect(boltsToRecheck(made, [{ bolt: 'J1/1', at: 0 }, { bolt: 'J1/2', at: 5 }, { bolt: 'J1/3', at: 12 }])).toEqual(['J1/2']);
 */
export function boltsToRecheck(
  checks: readonly CheckMade[],
  pulls: readonly { readonly bolt: string; readonly at: number }[],
): readonly string[] {
  const bolts = new Set<string>();
  const inOrder = [...checks].sort((a, b) => a.at - b.at);
  let good = Number.NEGATIVE_INFINITY;
  for (const { at, verdict } of inOrder) {
    if (verdict === 'pass') good = at;
    else for (const pull of pulls) if (pull.at > good && pull.at <= at) bolts.add(pull.bolt);
  }
  return [...bolts];
}
