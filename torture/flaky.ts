import type { Transport } from '../packages/sync/src/index.ts';
import type { Random } from './random.ts';

/** A question that arrives later, at whatever server there is then. */
export type Late = (way: Transport) => Promise<unknown>;

const nothing = { kind: 'unreachable', why: 'the network' } as const;

/**
 * A network that loses questions, loses answers, delivers twice and delivers late: what comes late is put into `delayed`, to be delivered
 * when somebody likes.
 */
export function flaky(way: Transport, random: Random, delayed: Late[]): Transport {
  return {
    push: async (job, batch) => {
      const luck = random.next();
      if (luck < 0.12) return nothing;
      if (luck < 0.22) {
        delayed.push((then) => then.push(job, batch));
        return nothing;
      }
      const answer = await way.push(job, batch);
      if (luck < 0.32) return nothing;
      if (luck < 0.4) return way.push(job, batch);
      return answer;
    },
    pull: async (job, from, limit) => {
      if (random.chance(0.12)) return nothing;
      const answer = await way.pull(job, from, random.chance(0.3) ? 1 + random.below(7) : limit);
      return answer.kind === 'answered' && random.chance(0.08)
        ? { kind: 'answered', value: answer.value.slice(0, random.below(answer.value.length)) }
        : answer;
    },
    putAttachment: (...asked) => (random.chance(0.2) ? Promise.resolve(nothing) : way.putAttachment(...asked)),
  };
}
