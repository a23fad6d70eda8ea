import { type CivilDate, civilDate } from '@clampwright/core';
import type { Book } from './book.ts';

/** Civil date on this device, as entries carry it. */
export const today = (now = new Date()): CivilDate =>
  civilDate([now.getFullYear(), String(now.getMonth() + 1).padStart(2, '0'), String(now.getDate()).padStart(2, '0')].join('-'))!;

/** Did the tool pass its daily check today? A later failure takes it back. */
export const isChecked = (book: Book, tool: string): boolean =>
  book.fold.state('tool', tool).checks.findLast(({ mention }) => mention.on === today())?.passed === true;
