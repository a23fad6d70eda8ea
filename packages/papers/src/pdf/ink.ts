import type { Role } from '../drawing/index.ts';

/** What a colour stands for on paper. */
export type Ink = Role | 'rule' | 'tint' | 'stop' | 'attention' | 'ready' | 'accent';

/** A report: the colours of the plan's pages, dark enough to be read on any printer. */
export const REPORT_INK: Readonly<Record<Ink, string>> = {
  ink: '#14191d',
  quiet: '#4d555a',
  paper: '#ffffff',
  mark: '#14191d',
  rule: '#b9b8b0',
  tint: '#f1efe8',
  stop: '#861a10',
  attention: '#6b4700',
  ready: '#0d4a3a',
  accent: '#123f5c',
};
/** Cards, tags and kit lists: black on white, so that any copier will do. */
export const BLACK_INK: Readonly<Record<Ink, string>> = {
  ink: '#000000',
  quiet: '#333333',
  paper: '#ffffff',
  mark: '#000000',
  rule: '#000000',
  tint: '#ffffff',
  stop: '#000000',
  attention: '#000000',
  ready: '#000000',
  accent: '#000000',
};
