/** Papers: bytes in (joint lists, charts, a job's YAML), bytes out (pages, cards, drawings). */

// Drawings
export { type At, jointDrawing, type Paint, type Role, type Scene, type Shape, toSvg } from './drawing/index.ts';
// Faults, marked where they were found
export { markedCopy } from './faults/marked-copy.ts';
// Models
export { type ModelJoint, modelJointList, type ParserPlace, type ReadModel, readModel } from './ifc/index.ts';
// Pages and cards
export {
  type CardsOptions,
  cardCss,
  cardsHtml,
  pageCss,
  trustedHtml,
  trustHtml,
} from './page/index.tsx';
// Reading
export {
  asCsv,
  type HeadingMeans,
  issuedValves,
  type JointHeadings,
  type JudgedTest,
  jointHeadings,
  type KnownJoint,
  LARGEST_FILE,
  MAPPING_FILE,
  type OpenFile,
  type ReadInspection,
  type ReadJob,
  type ReadOptions,
  type RecordOptions,
  readEquipment,
  readInspection,
  readJob,
  readMeasured,
  readRecords,
  readToolStore,
  readValves,
  type TighteningRecord,
} from './read/index.ts';
