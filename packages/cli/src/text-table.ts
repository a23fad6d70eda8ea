/** Columns padded to their widest cell; the last one is left ragged. */
export function textTable(headings: readonly string[], rows: readonly (readonly string[])[]): string {
  const widths = headings.map((heading, at) => Math.max(...[heading, ...rows.map((row) => row[at] ?? '')].map((cell) => [...cell].length)));
  const line = (cells: readonly string[]) =>
    cells
      .map((cell, at) => (at === cells.length - 1 ? cell : cell + ' '.repeat(Math.max(0, widths[at]! - [...cell].length))))
      .join('  ')
      .trimEnd();
  return [line(headings), line(widths.map((width) => '─'.repeat(width))), ...rows.map(line)].join('\n');
}
