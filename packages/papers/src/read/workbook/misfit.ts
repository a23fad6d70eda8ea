import { type Notice, notice } from '@clampwright/core';

/** Why a workbook cannot be read. Caught where the reading began; to callers it is a notice. */
export class WorkbookMisfit extends Error {
  constructor(readonly reason: (file: string) => Notice) {
    super('workbook cannot be read');
  }
}

export const broken = (problem: string) => new WorkbookMisfit((file) => notice('workbook-broken', { problem }, { file }));
export const unsafe = (problem: string) => new WorkbookMisfit((file) => notice('workbook-unsafe', { problem }, { file }));
export const tooLarge = (limit: string) => new WorkbookMisfit((file) => notice('file-too-large', { file, limit }, { file }));
