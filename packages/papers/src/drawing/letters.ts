import type { At, Role, TextShape } from './scene.ts';

/** Width of a text, mm: an estimate on the safe side, for a face whose figures are 0.56 em wide. */
export const textWidth = (text: string, size: number): number => [...text].length * size * 0.56;

/** Height of figures and capitals, share of the em. */
export const CAP = 0.68;

export const centred = (at: At, text: string, size: number, fill: Role = 'ink', bold = false): TextShape => ({
  kind: 'text',
  at: { x: at.x, y: at.y + (size * CAP) / 2 },
  text,
  size,
  anchor: 'middle',
  fill,
  bold,
});

/** Breaks a text into lines no wider than `width`; a word that is longer than a line is cut with an ellipsis. */
export function wrap(text: string, size: number, width: number, most = 4): string[] {
  const longest = Math.max(2, Math.floor(width / (size * 0.56)));
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/\s+/).filter(Boolean)) {
    const cut = [...word].length > longest ? `${[...word].slice(0, longest - 1).join('')}…` : word;
    const longer = line === '' ? cut : `${line} ${cut}`;
    if ([...longer].length <= longest) line = longer;
    else {
      lines.push(line);
      line = cut;
    }
  }
  if (line !== '') lines.push(line);
  return lines.length <= most ? lines : [...lines.slice(0, most - 1), `${[...lines[most - 1]!].slice(0, longest - 1).join('')}…`];
}
