import { notice } from '../notice/index.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import { mm } from '../quantity.ts';
import { findInchThread } from './find-inch-thread.ts';
import { metricPitches, metricThread } from './metric-threads.ts';
import type { Thread } from './thread.ts';

/** M, diameter, and perhaps a pitch and a tolerance class: `M24`, `m 24 x 2,0`, `M24×2-6g`. */
const METRIC = /^m\s*(\d+(?:[.,]\d+)?)(?:\s*[x×*-]\s*(\d+(?:[.,]\d+)?))?(?:\s*-\s*\d[a-z]{1,2}(?:\d[a-z]{1,2})?)?$/i;
const number = (text: string) => Number(text.replace(',', '.'));

/**
 * A thread by the designation people write, metric or inch.
 *
 * @example
 * expect(findThread('m 24 x 2.0').value.designation).toBe('M24×2');
 * expect(findThread('M24-3').value.designation).toBe('M24');
 * expect(findThread('1-1/8-8UN').value.designation).toBe('1 1/8-8UN');
 * expect(findThread('M72').notices[0].code).toBe('no-coarse-pitch');
 */
export function findThread(designation: string): Outcome<Thread> {
  const metric = METRIC.exec(designation.trim());
  if (!metric) {
    const inch = findInchThread(designation);
    return inch ? done(inch) : refused(notice('thread-unknown', { designation }));
  }
  const diameter = mm(number(metric[1]!));
  const pitch = metric[2] === undefined ? undefined : mm(number(metric[2]));
  const thread = metricThread(diameter, pitch);
  if (thread) return done(thread);
  const pitches = metricPitches(diameter);
  if (pitch === undefined && pitches.length > 0)
    return refused(notice('no-coarse-pitch', { designation, pitches: pitches.join(', '), example: `M${diameter}x${pitches[0]}` }));
  return refused(notice('thread-unknown', { designation }));
}
