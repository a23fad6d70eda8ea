import { notice, type Outcome, type Place, refused } from '@clampwright/core';
import { LARGEST_FILE_TEXT } from './decode.ts';

/** Gives the bytes of a file inside the job folder; says when it is missing, too large, or when a link leads out of the folder. */
export type OpenFile = (path: string) => Uint8Array | 'missing' | 'outside' | 'too large';

/** A file of the folder, or why it cannot be had. */
export function load(open: OpenFile, path: string, place: Place = { file: path }): Outcome<Uint8Array> {
  const bytes = open(sheetOf(path).file);
  switch (bytes) {
    case 'missing':
      return refused(notice('file-missing', { file: path }, place));
    case 'outside':
      return refused(notice('path-leaves-folder', { path }, place));
    case 'too large':
      return refused(notice('file-too-large', { file: path, limit: LARGEST_FILE_TEXT }, place));
    default:
      return { ok: true, value: bytes };
  }
}

/** `list.xlsx#Bolts` names a sheet of a workbook. */
export function sheetOf(path: string): { readonly file: string; readonly sheet?: string } {
  const parts = /^(.*\.xls[xm])#(.+)$/i.exec(path);
  return parts ? { file: parts[1]!, sheet: parts[2]! } : { file: path };
}
