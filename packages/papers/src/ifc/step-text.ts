/** What keeps a file from being STEP text, and in which line. */
export interface StepFault {
  readonly line: number;
  readonly problem: string;
}

const [NEWLINE, QUOTE, OPEN, CLOSE, SEMICOLON, SLASH, STAR, HASH, EQUALS, SPACE, ZERO, NINE] = [
  10, 39, 40, 41, 59, 47, 42, 35, 61, 32, 48, 57,
];
const DEEPEST = 32;
/** Figures of a statement's number: a longer one overflows in the parser, which then looks for it for ever. */
const MOST_FIGURES = 9;
/** A statement longer than this is none: the longest of real models are outlines of some hundred thousand points. */
const LONGEST_STATEMENT = 16 * 1024 * 1024;

/**
 * Looks over the text of a STEP file before a parser is given it: strings and comments end, brackets close, every statement of the data
 * is `#number = NAME( … );`, and the file has its end, behind which nothing is read. The parser behind may run on for ever in a file
 * that is not so.
 * Source: ISO 10303-21, clause 7 (tokens) and 10 and 11 (sections).
 */
export function stepText(bytes: Uint8Array): StepFault | { readonly text: Uint8Array } {
  let line = 1;
  let at = 0;
  let section: 'before' | 'header' | 'data' | 'after' = 'before';
  while (at < bytes.length) {
    const byte = bytes[at]!;
    if (byte <= SPACE) {
      if (byte === NEWLINE) line += 1;
      at += 1;
      continue;
    }
    if (byte === SLASH && bytes[at + 1] === STAR) {
      const end = endOfComment(bytes, at);
      if (end === undefined) return { line, problem: 'a comment is never closed' };
      line += newlines(bytes, at, end);
      at = end;
      continue;
    }
    const statement = endOfStatement(bytes, at);
    if (typeof statement === 'string') return { line, problem: statement };
    const { end, first } = statement;
    if (section === 'data' && byte === HASH) {
      if (!isInstance(bytes, at, first)) return { line, problem: 'this is no “#number = NAME( … );”' };
    } else {
      const word = wordAt(bytes, at, end);
      if (word === 'HEADER') section = 'header';
      else if (word === 'DATA') section = 'data';
      else if (word === 'ENDSEC') section = section === 'data' ? 'after' : 'before';
      else if (word === 'END-ISO-10303-21')
        return section === 'after' ? { text: bytes.subarray(0, end) } : { line, problem: 'the data do not end before the file' };
      else if (section === 'data') return { line, problem: 'this is no “#number = NAME( … );”' };
    }
    line += newlines(bytes, at, end);
    at = end;
  }
  return { line, problem: 'the file has no end: it was cut short' };
}

function endOfComment(bytes: Uint8Array, from: number): number | undefined {
  for (let at = from + 2; at + 1 < bytes.length; at += 1) if (bytes[at] === STAR && bytes[at + 1] === SLASH) return at + 2;
  return undefined;
}

/** Behind the semicolon of a statement, and where its first bracket opens; or what is wrong with it. */
function endOfStatement(bytes: Uint8Array, from: number): { readonly end: number; readonly first: number } | string {
  let depth = 0;
  let first = -1;
  const limit = Math.min(bytes.length, from + LONGEST_STATEMENT);
  for (let at = from; at < limit; at += 1) {
    const byte = bytes[at]!;
    if (byte === QUOTE) {
      at = bytes.indexOf(QUOTE, at + 1);
      if (at < 0) return 'a text is never closed';
    } else if (byte === HASH) {
      let figures = 0;
      while (isFigure(bytes[at + 1 + figures])) figures += 1;
      if (figures > MOST_FIGURES) return 'a number behind # is too long to be one of a statement';
      at += figures;
    } else if (byte === OPEN) {
      if (first < 0) first = at;
      depth += 1;
      if (depth > DEEPEST) return 'brackets are nested too deeply';
    } else if (byte === CLOSE) {
      depth -= 1;
      if (depth < 0) return 'a bracket closes that was not opened';
    } else if (byte === SEMICOLON) return depth === 0 ? { end: at + 1, first } : 'a bracket is never closed';
    else if (byte === SLASH && bytes[at + 1] === STAR) {
      const end = endOfComment(bytes, at);
      if (end === undefined) return 'a comment is never closed';
      at = end - 1;
    } else if (byte < 9 || byte > 126) return 'a character stands here that such a file does not hold';
  }
  return 'a statement has no end';
}

const isFigure = (byte: number | undefined) => byte !== undefined && byte >= ZERO && byte <= NINE;

/** `#number = NAME(`, up to the first bracket; or a complex instance, `#number = (`. */
function isInstance(bytes: Uint8Array, from: number, bracket: number): boolean {
  if (bracket < 0 || bracket - from > 200) return false;
  let text = '';
  for (let at = from; at < bracket; at += 1) text += String.fromCharCode(bytes[at]!);
  return /^#\d{1,9}\s*=\s*[A-Z0-9_]*\s*$/i.test(text) && bytes[from + 1] !== EQUALS;
}

function wordAt(bytes: Uint8Array, from: number, end: number): string {
  let text = '';
  for (let at = from; at < Math.min(end - 1, from + 40); at += 1) text += String.fromCharCode(bytes[at]!);
  return (/^[A-Z0-9-]+/i.exec(text)?.[0] ?? '').toUpperCase();
}

function newlines(bytes: Uint8Array, from: number, to: number): number {
  let count = 0;
  for (let at = from; at < to; at += 1) if (bytes[at] === NEWLINE) count += 1;
  return count;
}
