/** Papers: bytes in (joint lists, charts, a job's YAML), bytes out (pages, cards, drawings). */

// Drawings
export { type At, jointDrawing, type Paint, type Role, type Scene, type Shape, toSvg } from './drawing/index.ts';
// Pages and cards
export {
  type CardsOptions,
  cardCss,
  cardsHtml,
  jointHtml,
  type Links,
  missingHtml,
  pageCss,
  planHtml,
  trustedHtml,
  trustHtml,
} from './page/index.tsx';
// Reading
export {
  type JudgedTest,
  LARGEST_FILE,
  type OpenFile,
  type ReadInspection,
  type ReadJob,
  readInspection,
  readJob,
  readTests,
  readValves,
} from './read/index.ts';
