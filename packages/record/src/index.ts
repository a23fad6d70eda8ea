/**
 * What is kept: entries, their bytes and hashes, device chains, receipts, the Merkle tree over them, and the one fold from entries to
 * state. Pure: no storage, no network, no clock. Start at `readEntry` (what an entry is) and `openFold` (what entries add up to).
 */
export { canonicalBytes, canonicalText, type Json, readCanonical } from './bytes/canonical.ts';
export { digest, type Hash, hashOf, isHash } from './bytes/hash.ts';
export { BOOK_PATTERN, DEVICE_PATTERN, deviceIdOf, idOf, idPattern } from './bytes/id.ts';
export { isSignedBy, type KeyPair, keyPairOf, sign } from './bytes/keys.ts';
export { joinBytes, readUtf8, sameBytes, utf8 } from './bytes/text.ts';
export { checkHead, headBytes, readHead, type SignedHead, signHead } from './chain/head.ts';
export { type Receipt, readReceipt, receiptBytes } from './chain/receipt.ts';
export { chainSchemas } from './chain/schemas.ts';
export { type ByteSource, bytesOf, bytesSource, checkSection, Misfit, readSections } from './container/read.ts';
export { type Section, sectionOf, writeContainer } from './container/write.ts';
export { type Envelope, type Kept, LARGEST_ENTRY_BYTES, readEntry } from './entry/envelope.ts';
export { TROUBLES } from './entry/kinds/bolt-trouble.ts';
export { type BodyOf, KINDS, type KindName } from './entry/kinds/index.ts';
export { ROLES } from './entry/kinds/person-enrolled.ts';
export { CUT_OUT_CAUSES } from './entry/kinds/tool-cut-out.ts';
export { bodySchemas, entrySchema } from './entry/schemas.ts';
export { isSignOff, readableKind } from './entry/understand.ts';
export { type Around, writeEntry } from './entry/write.ts';
export type { BatteryDraft, BookDraft, LotDraft, Mention, PersonDraft, ToldCertificate, ToldChart, ToolDraft } from './fold/draft.ts';
export { finishedJoints } from './fold/finished-joints.ts';
export { type Fold, openFold } from './fold/fold.ts';
export type { BoltDraft, JointDraft, Tightened } from './fold/joint-draft.ts';
export type { Nonconformance } from './fold/nonconformance.ts';
export { hasTrouble, isFor } from './fold/tighten-bolt.ts';
export { readReport } from './handover/read-report.ts';
export { type NotVerified, type Verified, type VerifyOptions, verifyHandover } from './handover/verify.ts';
export { type HandoverSource, writeHandover } from './handover/write.ts';
export {
  type Checkpoint,
  type NoteKey,
  noteKeyText,
  openCheckpoint,
  openNote,
  readNoteKey,
  signCheckpoint,
  signNote,
} from './merkle/checkpoint.ts';
export { consistencyProof, inclusionProof, type SubtreeHash, subtreeOf } from './merkle/prove.ts';
export { EMPTY_FRONTIER, type Frontier, grow, leafHash, nodeHash, rootOf } from './merkle/tree.ts';
export { isConsistent, isIncluded } from './merkle/verify.ts';
export { type Issue, type IssuedValve, issuePlan } from './plan/issue-plan.ts';
export { issuedJoints } from './plan/taken-off.ts';
export {
  batteryEntry,
  chartEntry,
  isBatteryNews,
  isPhotoNews,
  isToolNews,
  photoEntry,
  type ReadTool,
  toolEntry,
  typedToolEntry,
  type YardEntry,
} from './yard/register.ts';
