import { IntlMessageFormat } from 'intl-messageformat';

/** A piece of a message as it is parsed; its type by number. */
export interface Piece {
  readonly type: number;
  readonly value?: unknown;
  readonly options?: Readonly<Record<string, { readonly value: readonly Piece[] }>>;
}

/** Every piece of a message, those inside a choice too; an ICU fault throws. */
export function piecesOf(text: string, language: string): Piece[] {
  const all = (found: readonly Piece[]): Piece[] =>
    found.flatMap((one) => [one, ...Object.values(one.options ?? {}).flatMap(({ value }) => all(value))]);
  return all(new IntlMessageFormat(text, language).getAst() as readonly Piece[]);
}

/** Plain text, and the count inside a plural. */
const NAMELESS = [0, 7];

/** Parameters of a message, by name, each once. */
export const parametersOf = (text: string, language: string): string[] =>
  [...new Set(piecesOf(text, language).flatMap(({ type, value }) => (NAMELESS.includes(type) ? [] : [String(value)])))].sort();
