import { boltCountOf, type Joint } from '../job/job.ts';
import { type Notice, notice } from '../notice/index.ts';

/** Every bolt of the joint must belong to exactly one subgroup. */
export function positionNotices(joint: Joint): Notice[] {
  const boltCount = boltCountOf(joint.layout);
  if (!Number.isSafeInteger(boltCount) || boltCount < 1) return [notice('no-bolts', {}, joint.place)];
  const seen = new Uint8Array(boltCount + 1);
  const outside: number[] = [];
  for (const { positions } of joint.subgroups) {
    for (const position of positions) {
      if (position >= 1 && position <= boltCount && Number.isInteger(position)) seen[position] = Math.min(2, seen[position]! + 1);
      else outside.push(position);
    }
  }
  const missing: number[] = [];
  const twice: number[] = [...outside];
  for (let bolt = 1; bolt <= boltCount; bolt += 1) {
    if (seen[bolt] === 0) missing.push(bolt);
    if (seen[bolt] === 2) twice.push(bolt);
  }
  if (missing.length === 0 && twice.length === 0) return [];
  return [notice('positions-wrong', { boltCount, missing: few(missing), twice: few(twice) }, joint.place)];
}

const few = (bolts: readonly number[]) =>
  bolts.length === 0 ? 'none' : bolts.length > 8 ? `${bolts.slice(0, 8).join(', ')} …` : bolts.join(', ');
