/** A small typesetter: text that runs down pages, headings, paragraphs, facts, tables, figures. */
export { callout, type FactGroup, factPair, facts, figure, heading, list, type Pair, paragraph, signatureLines } from './blocks.ts';
export { letterhead, type Organisation, sheetChrome } from './chrome.ts';
export { A4, type Flow, setPaper } from './flow.ts';
export { openTable, table } from './table.ts';
export { tallies } from './tallies.ts';
export { said, type Text } from './text.ts';
