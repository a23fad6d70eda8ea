import { SaxesParser } from 'saxes';
import { broken, unsafe } from './misfit.ts';
import { unpack, type ZipPart } from './zip.ts';

/** What is wanted of an XML part; names come without their prefix. */
export interface XmlTaker {
  readonly open?: (name: string, attributes: Readonly<Record<string, string>>) => void;
  readonly text?: (text: string) => void;
  readonly close?: (name: string) => void;
}

const DEEPEST = 64;
/** Thrown by a taker that has seen enough. */
export const ENOUGH = Symbol('enough');

/** Reads an XML part as it is unpacked. Document types, and with them entities of one's own, are refused; so is anything not well-formed. */
export function readXml(part: ZipPart, { open, text, close }: XmlTaker): void {
  const decoder = new TextDecoder('utf-8', { fatal: true });
  const parser = new SaxesParser({ xmlns: false, position: false });
  let depth = 0;
  parser.on('error', () => {
    throw broken(`its part ${part.name} is not well-formed XML`);
  });
  parser.on('doctype', () => {
    throw unsafe(`its part ${part.name} declares a document type`);
  });
  parser.on('opentag', ({ name, attributes }) => {
    depth += 1;
    if (depth > DEEPEST) throw unsafe(`its part ${part.name} is nested too deeply`);
    open?.(local(name), attributes);
  });
  parser.on('closetag', ({ name }) => {
    depth -= 1;
    close?.(local(name));
  });
  if (text) {
    parser.on('text', text);
    parser.on('cdata', text);
  }
  try {
    unpack(part, (piece, last) => {
      parser.write(textOf(decoder, piece, last, part.name));
      if (last) parser.close();
    });
  } catch (error) {
    if (error !== ENOUGH) throw error;
  }
}

function textOf(decoder: TextDecoder, piece: Uint8Array, last: boolean, name: string): string {
  try {
    return decoder.decode(piece, { stream: !last });
  } catch {
    throw broken(`its part ${name} is not UTF-8`);
  }
}

const local = (name: string): string => (name.includes(':') ? name.slice(name.indexOf(':') + 1) : name);

/** An attribute by its name without prefix: `r:id` and `id` are one. */
export function attribute(attributes: Readonly<Record<string, string>>, name: string): string | undefined {
  return attributes[name] ?? attributes[Object.keys(attributes).find((key) => key.endsWith(`:${name}`)) ?? ''];
}
