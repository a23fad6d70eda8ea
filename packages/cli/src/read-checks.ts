import { createReadStream, readFileSync, statSync } from 'node:fs';
import { createInterface } from 'node:readline';
import { type InteractionCase, isInteractionCase, type Row } from '@clampwright/reference';

/** A line, or a whole file, that is no reference figure. */
export interface Broken {
  readonly file: string;
  readonly line: number;
  readonly problem: string;
}

/** Joints with finite-element truth are single documents of this size at most; rows come line by line, without end. */
const LARGEST_CASE = 64 * 1024 * 1024;

/** What one file holds: one interaction joint, or rows of which each is handed on as it is read. */
export async function readChecks(
  file: string,
  onRow: (row: Row) => void,
  onCase: (one: InteractionCase) => void,
  onBroken: (broken: Broken) => void,
): Promise<void> {
  if (!file.endsWith('.jsonl') && statSync(file).size <= LARGEST_CASE) {
    const whole = parse(readFileSync(file, 'utf8'));
    if (isInteractionCase(whole)) return onCase(whole);
  }
  let line = 0;
  for await (const text of createInterface({ input: createReadStream(file), crlfDelay: Number.POSITIVE_INFINITY })) {
    line += 1;
    if (text.trim() === '') continue;
    const row = rowOf(parse(text));
    if (typeof row === 'string') onBroken({ file, line, problem: row });
    else onRow(row);
  }
}

function parse(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function rowOf(value: unknown): Row | string {
  if (value === undefined) return 'not a line of JSON';
  const row = value as Partial<Row> | null;
  const complete =
    row &&
    typeof row.id === 'string' &&
    typeof row.topic === 'string' &&
    typeof row.quantity === 'string' &&
    typeof row.inputs === 'object' &&
    'expected' in row &&
    typeof row.tolerance === 'object';
  return complete ? (row as Row) : 'not a reference row: id, topic, quantity, inputs, expected and tolerance are wanted';
}
