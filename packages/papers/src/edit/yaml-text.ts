import { type Document, isCollection, isMap, isScalar, isSeq, parseDocument, Scalar, visit } from 'yaml';
import { decode } from '../read/decode.ts';

type Path = readonly (string | number)[];

/** One change of a YAML file. */
export type YamlChange =
  | { readonly kind: 'set'; readonly path: Path; readonly value: unknown }
  | { readonly kind: 'remove'; readonly path: Path }
  /** into a list, which is made where there is none */
  | { readonly kind: 'insert'; readonly path: Path; readonly at: number; readonly value: unknown };

/** What a YAML file says, every number as it is written: `0012` is a name. `undefined` where it cannot be read. */
export function yamlOf(bytes: Uint8Array): unknown {
  const document = documentOf(bytes);
  if (!document) return undefined;
  visit(document, {
    Scalar(_, node) {
      if (typeof node.value === 'number' && node.source !== undefined) node.value = node.source;
    },
  });
  try {
    return document.toJS({ maxAliasCount: 20 });
  } catch {
    return undefined;
  }
}

/** The same file with some changes; comments, order and spelling of all else stay. A file that cannot be read is left as it is. */
export function changeYaml(bytes: Uint8Array, changes: readonly YamlChange[]): Uint8Array {
  const document = documentOf(bytes);
  if (!document) return bytes;
  for (const change of changes) apply(document, change);
  return new TextEncoder().encode(document.toString({ lineWidth: 0 }));
}

function documentOf(bytes: Uint8Array): Document.Parsed | undefined {
  const decoded = bytes.length === 0 ? { ok: true as const, value: { text: '' } } : decode(bytes, '');
  if (!decoded.ok) return undefined;
  try {
    const document = parseDocument(decoded.value.text, { prettyErrors: false, uniqueKeys: true });
    return document.errors.length > 0 ? undefined : document;
  } catch {
    return undefined;
  }
}

function apply(document: Document, change: YamlChange): void {
  const { path } = change;
  switch (change.kind) {
    case 'set': {
      const there = document.getIn(path, true);
      // the node stays where only its value changes: a comment behind it belongs to it
      if (isScalar(there) && !(change.value instanceof Object)) {
        there.value = plain(change.value);
        delete there.source;
        delete there.format;
        if (typeof there.value !== 'string') there.type = Scalar.PLAIN;
      } else document.setIn(path, document.createNode(plain(change.value)));
      return;
    }
    case 'remove': {
      document.deleteIn(path);
      // a map that says nothing any more goes too; a list stays, empty
      const parent = path.slice(0, -1);
      const left = parent.length > 0 ? document.getIn(parent, true) : undefined;
      if (isMap(left) && left.items.length === 0) document.deleteIn(parent);
      return;
    }
    case 'insert': {
      const list = document.getIn(path, true);
      const node = document.createNode(plain(change.value));
      if (isCollection(node) && isMap(node) && node.items.every(({ value }) => !isCollection(value))) node.flow = true;
      if (isSeq(list)) {
        // a list written as `[]` is opened
        if (list.items.length === 0) list.flow = false;
        list.items.splice(change.at, 0, node);
      } else document.setIn(path, document.createNode([node]));
    }
  }
}

/** A figure is written as a figure, where that keeps every digit of it. */
function plain(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(plain);
  if (value instanceof Object) return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, plain(one)]));
  return typeof value === 'string' && /^-?(0|[1-9]\d*)(\.\d+)?$/.test(value) && String(Number(value)) === value ? Number(value) : value;
}
