import { type Notice, notice, type Outcome, type Place, refused } from '@clampwright/core';
import { type Document, LineCounter, parseDocument, visit } from 'yaml';
import type { z } from 'zod';
import { decode } from './decode.ts';

/** More aliases than this are a bomb, not a job. */
const MOST_ALIASES = 20;

export interface YamlValue<T> {
  readonly value: T;
  /** the place of a key in the file */
  readonly at: (path: readonly PropertyKey[]) => Place;
  readonly notices: readonly Notice[];
}

/** Reads a YAML file against its schema: every fault with line, key and what is wanted. */
export function readYaml<S extends z.ZodType>(bytes: Uint8Array, file: string, schema: S): Outcome<YamlValue<z.output<S>>> {
  const decoded = decode(bytes, file);
  if (!decoded.ok) return decoded;
  const lines = new LineCounter();
  const document = parsed(decoded.value.text, lines);
  if (!document) return refused(notice('yaml-broken', { problem: 'it is nested too deeply' }, { file }));
  if (document.errors.length > 0) {
    return refused(
      ...document.errors.map(({ message, pos }) =>
        notice('yaml-broken', { problem: message.split('\n')[0]! }, { file, row: lines.linePos(pos[0]).line }),
      ),
    );
  }
  let plain: unknown;
  try {
    plain = document.toJS({ maxAliasCount: MOST_ALIASES });
  } catch (error) {
    if (!(error instanceof ReferenceError)) throw error;
    return refused(notice('yaml-broken', { problem: 'too many aliases' }, { file }));
  }
  const at = (path: readonly PropertyKey[]): Place => {
    for (let depth = path.length; depth > 0; depth -= 1) {
      const node = document.getIn(path.slice(0, depth), true) as { range?: [number, number, number] } | undefined;
      if (node?.range) return { file, row: lines.linePos(node.range[0]).line, path: path.join(' → ') };
    }
    return path.length === 0 ? { file } : { file, path: path.join(' → ') };
  };
  const checked = checkValue(schema, plain ?? {}, at);
  if (!checked.ok) return refused(...decoded.value.notices, ...checked.notices);
  return { ok: true, value: { value: checked.value, at, notices: decoded.value.notices } };
}

/** The document with numbers kept as they are written: a serial number `0012` or a lot `1.10` is a name. `undefined`: too deep. */
function parsed(text: string, lineCounter: LineCounter): Document.Parsed | undefined {
  try {
    const document = parseDocument(text, { lineCounter, prettyErrors: false, uniqueKeys: true });
    visit(document, {
      Scalar(_, node) {
        if (typeof node.value === 'number' && node.source !== undefined) node.value = node.source;
      },
    });
    return document;
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

/** Holds one value of a file against its schema; `path` is where it stands in the file. */
export function checkValue<S extends z.ZodType>(
  schema: S,
  value: unknown,
  at: (path: readonly PropertyKey[]) => Place,
  path: readonly PropertyKey[] = [],
): Outcome<z.output<S>> {
  const checked = schema.safeParse(value);
  return checked.success
    ? { ok: true, value: checked.data }
    : refused(...checked.error.issues.flatMap((issue) => noticesOf(issue, (inner) => at([...path, ...inner]))));
}

/** What a schema asks for, in words that every language has. */
const KINDS: Readonly<Partial<Record<string, string>>> = {
  string: 'a word or a name',
  array: 'a list',
  object: 'a group of keys with their values',
  record: 'a group of keys with their values',
  boolean: 'true, false',
};

function noticesOf(issue: z.core.$ZodIssue, at: (path: readonly PropertyKey[]) => Place): Notice[] {
  if (issue.code === 'unrecognized_keys') return issue.keys.map((key) => notice('yaml-unknown-key', { key }, at([...issue.path, key])));
  const said = issue.code === 'custom' ? (issue.params?.said as Notice | undefined) : undefined;
  if (said) return [{ ...said, place: at(issue.path) }];
  const wanted =
    issue.code === 'invalid_value'
      ? issue.values.map(String).join(', ')
      : issue.code === 'invalid_type'
        ? (KINDS[issue.expected] ?? issue.expected)
        : issue.message;
  return [notice('yaml-wrong-value', { wanted }, at(issue.path))];
}
