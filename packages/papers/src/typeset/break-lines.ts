/**
 * Breaks a text into lines no wider than `width`. Words stay whole where they fit; one that is longer than a line (a hash, a long tag) is
 * cut where it must be, and never loses a sign. `widthOf` and `width` in the same unit.
 *
 * @example
 * expect(breakLines('tighten the ring', 9, (text) => text.length)).toEqual(['tighten', 'the ring']);
 * expect(breakLines('0123456789', 4, (text) => text.length)).toEqual(['0123', '4567', '89']);
 */
export function breakLines(text: string, width: number, widthOf: (text: string) => number): string[] {
  if (!text.includes('\n') && widthOf(text) <= width) return [text];
  return text.split('\n').flatMap((paragraph) => breakParagraph(paragraph, width, widthOf));
}

function breakParagraph(text: string, width: number, widthOf: (text: string) => number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/ +/).filter((one) => one !== '')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (widthOf(longer) <= width) {
      line = longer;
      continue;
    }
    if (line !== '') lines.push(line);
    const pieces = widthOf(word) <= width ? [word] : cut(word, width, widthOf);
    lines.push(...pieces.slice(0, -1));
    line = pieces.at(-1)!;
  }
  return [...lines, line];
}

function cut(word: string, width: number, widthOf: (text: string) => number): string[] {
  const pieces: string[] = [];
  let piece = '';
  for (const sign of word) {
    if (piece !== '' && widthOf(piece + sign) > width) {
      pieces.push(piece);
      piece = '';
    }
    piece += sign;
  }
  return [...pieces, piece];
}
