import type { Told } from '../entry/kind.ts';
import type { Tightened } from './joint-draft.ts';
import { mentionOf } from './mention.ts';

interface TightenedBody {
  readonly tool?: string | undefined;
  readonly setting?: string | undefined;
  readonly end: string;
  readonly angleMilliDegree?: number | undefined;
}

export function tightenedOf(told: Told<TightenedBody>, batch: boolean): Tightened {
  const { tool, setting, end, angleMilliDegree } = told.body;
  const tightened: { -readonly [K in keyof Tightened]: Tightened[K] } = Object.assign(mentionOf(told), { end, batch });
  if (tool !== undefined) tightened.tool = tool;
  if (setting !== undefined) tightened.setting = setting;
  if (angleMilliDegree !== undefined) tightened.angleMilliDegree = angleMilliDegree;
  return tightened;
}
