import type { IfcAPI } from 'web-ifc';

/** A line of a STEP file: attributes by name, as the parser gives them. */
export type Line = Readonly<Record<string, unknown>> & { readonly expressID: number; readonly type: number };

/** What is asked of a model; the parser is behind it, so that it can be replaced. */
export interface Model {
  readonly schema: string;
  readonly ids: (type: number) => readonly number[];
  readonly line: (id: number) => Line | undefined;
}

/** The lines of an open model, each read once. */
export function modelOf(api: IfcAPI, id: number): Model {
  const known = new Map<number, Line | undefined>();
  return {
    schema: api.GetModelSchema(id),
    ids: (type) => {
      const found = api.GetLineIDsWithType(id, type);
      return Array.from({ length: found.size() }, (_, at) => found.get(at));
    },
    line: (wanted) => {
      if (known.has(wanted)) return known.get(wanted);
      const line = readLine(api, id, wanted);
      known.set(wanted, line);
      return line;
    },
  };
}

/** A line that is named and not there, or whose attributes do not fit its entity, is none. */
function readLine(api: IfcAPI, id: number, wanted: number): Line | undefined {
  try {
    return (api.GetLine(id, wanted) as Line | undefined) ?? undefined;
  } catch {
    return undefined;
  }
}

const REFERENCE = 5;
interface Wrapped {
  readonly type?: number;
  readonly value?: unknown;
}
const isWrapped = (value: unknown): value is Wrapped => typeof value === 'object' && value !== null && 'value' in value;

/** The number of the line that an attribute names. */
const reference = (value: unknown): number | undefined =>
  isWrapped(value) && value.type === REFERENCE && typeof value.value === 'number' ? value.value : undefined;

/** The line that an attribute names. */
export function follow(model: Model, value: unknown): Line | undefined {
  const id = reference(value);
  return id === undefined ? undefined : model.line(id);
}

export const list = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);
export const references = (value: unknown): number[] => list(value).flatMap((one) => reference(one) ?? []);

export function text(value: unknown): string | undefined {
  const bare = isWrapped(value) ? value.value : value;
  const found = typeof bare === 'string' ? bare.trim() : '';
  return found === '' || found === '$' ? undefined : found;
}

export function number(value: unknown): number | undefined {
  const bare = isWrapped(value) ? value.value : value;
  const found = typeof bare === 'string' && bare.trim() !== '' ? Number(bare) : bare;
  return typeof found === 'number' && Number.isFinite(found) ? found : undefined;
}
