/** A published figure to hold the engine against: one line of JSON in a `.jsonl` file. */
export interface Row {
  readonly id: string;
  readonly topic: string;
  readonly quantity: string;
  readonly inputs: Inputs;
  readonly expected: Value;
  readonly unit: string;
  readonly tolerance: { readonly abs?: number; readonly rel?: number; readonly exact?: boolean };
  readonly source: string;
  readonly provenance: string;
  readonly note?: string;
}

export type Scalar = number | string | boolean | null;
export type Value = Scalar | readonly Scalar[];

/** The givens of a row. Keys carry their unit; a key without one is a pure number, a class or a name. */
export interface Inputs {
  readonly [key: string]: Value | undefined;
}

/** What an evaluator finds: a value in the row's unit; `null` when the engine refuses because the standard gives none. */
export type Evaluator = (inputs: Inputs, row: Row) => Value | undefined;

/** Evaluators of one topic by quantity. `undefined` from an evaluator means: this form of the question is not evaluated. */
export type Evaluators = Readonly<Record<string, Evaluator>>;
