import type { Told } from '../entry/kind.ts';
import type { Tightened } from './joint-draft.ts';
import { mentionOf } from './mention.ts';

interface TightenedBody {
  readonly tool?: string | undefined;
  readonly setting?: string | undefined;
  readonly end: string;
  readonly angleMilliDegree?: number | undefined;
}

export const tightenedOf = (told: Told<TightenedBody>, batch: boolean): Tightened => {
  const { tool, setting, end, angleMilliDegree } = told.body;
  return {
    ...mentionOf(told),
    end,
    batch,
    ...(tool === undefined ? {} : { tool }),
    ...(setting === undefined ? {} : { setting }),
    ...(angleMilliDegree === undefined ? {} : { angleMilliDegree }),
  };
};
