/** A small typesetter: text that runs down pages, headings, paragraphs, facts, tables, figures. */
export { callout, facts, figure, heading, list, paragraph, signatureLines } from './blocks.ts';
export { letterhead, type Organisation, sheetChrome } from './chrome.ts';
export { A4, type Flow, leadingOf, openFlow, type Sheet, setLines } from './flow.ts';
export { type Cell, type Column, table } from './table.ts';
export { type Tally, tallies } from './tallies.ts';
