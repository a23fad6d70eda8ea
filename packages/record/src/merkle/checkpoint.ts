import { done, notice, type Outcome, refused } from '@clampwright/core';
import { base64 } from '@scure/base';
import { digest } from '../bytes/hash.ts';
import { BOOK_PATTERN } from '../bytes/id.ts';
import { isSignedBy, type KeyPair, sign } from '../bytes/keys.ts';
import { joinBytes, sameBytes, utf8 } from '../bytes/text.ts';

/**
 * Signed notes and checkpoints as C2SP signed-note and tlog-checkpoint describe them: text that ends in a newline, an empty line, then
 * one line for each signature, `— name base64(key id ‖ signature)`. Any tool that knows the open format can read ours.
 */
export interface NoteKey {
  readonly name: string;
  readonly publicKey: Uint8Array;
}

const ED25519 = 1;
const NAME = /^[^\s+]+$/u;

/** First four bytes of SHA-256(name ‖ newline ‖ 0x01 ‖ public key). */
const keyId = ({ name, publicKey }: NoteKey) => digest(joinBytes(utf8(`${name}\n`), Uint8Array.of(ED25519), publicKey)).slice(0, 4);

/** `name+key id+base64(0x01 ‖ public key)`: how a key is handed on. */
export const noteKeyText = (key: NoteKey): string =>
  `${key.name}+${[...keyId(key)].map((byte) => byte.toString(16).padStart(2, '0')).join('')}+${base64.encode(joinBytes(Uint8Array.of(ED25519), key.publicKey))}`;

export function readNoteKey(text: string): Outcome<NoteKey> {
  const malformed = refused(notice('note-malformed', { line: 1 }));
  const [name, id, encoded, ...rest] = split(text);
  if (!name || !NAME.test(name) || id === undefined || encoded === undefined || rest.length > 0) return malformed;
  const bytes = decode(encoded);
  if (bytes?.length !== 33 || bytes[0] !== ED25519) return malformed;
  const key = { name, publicKey: bytes.slice(1) };
  return noteKeyText(key) === text ? done(key) : malformed;
}
/** The key may itself hold a plus sign. */
const split = (text: string) => {
  const parts = text.split('+');
  return parts.length < 3 ? parts : [parts[0]!, parts[1]!, parts.slice(2).join('+')];
};

export function signNote(text: string, name: string, keys: KeyPair): string {
  if (!text.endsWith('\n') || text.includes('\n\n') || !NAME.test(name)) throw new RangeError('not the text of a note');
  const signature = joinBytes(keyId({ name, publicKey: keys.publicKey }), sign(utf8(text), keys));
  return `${text}\n— ${name} ${base64.encode(signature)}\n`;
}

const SIGNATURE = /^— (\S+) (\S+)$/u;

/** The text of a note with one signature by the key given; anything before, between or after is refused. */
export function openNote(note: string, key: NoteKey): Outcome<string> {
  const end = note.indexOf('\n\n');
  if (end < 0) return refused(notice('note-malformed', { line: 1 }));
  const text = note.slice(0, end + 1);
  const lineNumber = text.split('\n').length + 1;
  const line = note.slice(end + 2);
  const parts = line.endsWith('\n') ? SIGNATURE.exec(line.slice(0, -1)) : null;
  const bytes = parts && decode(parts[2]!);
  if (!parts || bytes?.length !== 68) return refused(notice('note-malformed', { line: lineNumber }));
  const fits = parts[1] === key.name && sameBytes(bytes.slice(0, 4), keyId(key)) && isSignedBy(utf8(text), bytes.slice(4), key.publicKey);
  return fits ? done(text) : refused(notice('note-not-signed', { name: key.name }));
}

/** A log's word for its first `size` entries. */
export interface Checkpoint {
  readonly job: string;
  readonly size: number;
  readonly root: Uint8Array;
}

const ORIGIN = 'clampwright/';

const checkpointText = ({ job, size, root }: Checkpoint): string => `${ORIGIN}${job}\n${size}\n${base64.encode(root)}\n`;

function readCheckpointText(text: string): Outcome<Checkpoint> {
  const [origin = '', size = '', root = '', ...rest] = text.split('\n');
  const job = origin.startsWith(ORIGIN) ? origin.slice(ORIGIN.length) : '';
  if (!BOOK_PATTERN.test(job)) return refused(notice('note-malformed', { line: 1 }));
  if (!/^(0|[1-9]\d{0,14})$/.test(size)) return refused(notice('note-malformed', { line: 2 }));
  const bytes = decode(root);
  if (bytes?.length !== 32) return refused(notice('note-malformed', { line: 3 }));
  if (rest.length !== 1 || rest[0] !== '') return refused(notice('note-malformed', { line: 4 }));
  return done({ job, size: Number(size), root: bytes });
}

export const signCheckpoint = (checkpoint: Checkpoint, name: string, keys: KeyPair): string =>
  signNote(checkpointText(checkpoint), name, keys);

export function openCheckpoint(note: string, key: NoteKey): Outcome<Checkpoint> {
  const text = openNote(note, key);
  return text.ok ? readCheckpointText(text.value) : text;
}

/** Strict base64: one spelling, with padding. */
function decode(text: string): Uint8Array | undefined {
  try {
    const bytes = base64.decode(text);
    return base64.encode(bytes) === text ? bytes : undefined;
  } catch {
    return undefined;
  }
}
