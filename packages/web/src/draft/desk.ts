import { watched } from '../job/store.ts';
import type { Draft, Files } from './draft.ts';
import { everyFile, keepDraft, readDraft } from './draft-shelf.ts';

/** The draft in hand, with what it was before each change. */
export interface Desk {
  readonly draft: Draft;
  readonly past: readonly Files[];
  readonly future: readonly Files[];
}

/** So many changes can be taken back. */
const MOST_PAST = 500;
const KEY = 'clampwright draft';
/** A change is kept this long after the last one. */
const KEEP_MS = 250;

export const desk = watched<Desk | undefined>(undefined);
/** Is what is on the desk also on the disk? */
export const isKept = watched(true);

let waiting: ReturnType<typeof setTimeout> | undefined;
function keepSoon(): void {
  isKept.set(false);
  clearTimeout(waiting);
  waiting = setTimeout(() => void keepNow(), KEEP_MS);
}

/** Keeps what is on the desk at once. */
async function keepNow(): Promise<void> {
  clearTimeout(waiting);
  const here = desk.get();
  if (!here || isKept.get()) return;
  await keepDraft(here.draft);
  if (desk.get() === here) isKept.set(true);
}
addEventListener('pagehide', () => void keepNow());

/** A file of this name of every draft of this browser, that of the desk with its last change; the last changed last. */
export async function fileOfEveryDraft(name: string): Promise<readonly Uint8Array[]> {
  await keepNow();
  return everyFile(name);
}

/** Puts a draft on the desk; it is there again after a reload. */
export async function putOnDesk(draft: Draft): Promise<void> {
  await keepNow();
  await keepDraft(draft);
  sessionStorage.setItem(KEY, draft.id);
  localStorage.setItem(KEY, draft.id);
  desk.set({ draft, past: [], future: [] });
}

/** Takes the last draft of this window, or of this browser, back onto the desk. */
export async function resumeDesk(): Promise<void> {
  if (desk.get()) return;
  const id = sessionStorage.getItem(KEY) ?? localStorage.getItem(KEY);
  const draft = id === null ? undefined : await readDraft(id);
  if (draft && !desk.get()) desk.set({ draft, past: [], future: [] });
}

export async function clearDesk(): Promise<void> {
  await keepNow();
  sessionStorage.removeItem(KEY);
  localStorage.removeItem(KEY);
  desk.set(undefined);
}

const now = () => new Date().toISOString();

/** Changes the files of the draft in hand: one step to take back. */
export function change(to: (files: Files) => Files): void {
  const here = desk.get();
  if (!here) return;
  const files = to(here.draft.files);
  if (files === here.draft.files) return;
  desk.set({ draft: { ...here.draft, files, changed: now() }, past: [...here.past.slice(1 - MOST_PAST), here.draft.files], future: [] });
  keepSoon();
}

export function undo(): void {
  const here = desk.get();
  const files = here?.past.at(-1);
  if (!here || !files) return;
  desk.set({
    draft: { ...here.draft, files, changed: now() },
    past: here.past.slice(0, -1),
    future: [here.draft.files, ...here.future],
  });
  keepSoon();
}

export function redo(): void {
  const here = desk.get();
  const [files, ...future] = here?.future ?? [];
  if (!here || !files) return;
  desk.set({ draft: { ...here.draft, files, changed: now() }, past: [...here.past, here.draft.files], future });
  keepSoon();
}

export function rename(name: string): void {
  const here = desk.get();
  if (!here || name.trim() === '') return;
  desk.set({ ...here, draft: { ...here.draft, name: name.trim(), changed: now() } });
  keepSoon();
}
