import { agrees } from './compare.ts';
import { DISPUTED } from './disputed.ts';
import { EVALUATORS } from './evaluators/index.ts';
import { isNotOurs } from './not-ours.ts';
import type { Row, Value } from './row.ts';

export type Judgement = 'agreed' | 'disagreed' | 'disputed' | 'not evaluated' | "not the product's";

export interface Judged {
  readonly row: Row;
  readonly judgement: Judgement;
  readonly found?: Value;
  /** why a row could not be evaluated although an evaluator exists */
  readonly problem?: string;
}

/** Holds the engine against one published row. */
export function judge(row: Row): Judged {
  if (isNotOurs(row)) return { row, judgement: "not the product's" };
  const evaluate = EVALUATORS[row.topic]?.[row.quantity];
  if (!evaluate) return { row, judgement: 'not evaluated' };
  let found: Value | undefined;
  try {
    found = evaluate(row.inputs, row);
  } catch (error) {
    return { row, judgement: 'not evaluated', problem: error instanceof Error ? error.message : String(error) };
  }
  if (found === undefined) return { row, judgement: 'not evaluated' };
  if (agrees(found, row)) return { row, judgement: 'agreed', found };
  return { row, judgement: row.id in DISPUTED ? 'disputed' : 'disagreed', found };
}
