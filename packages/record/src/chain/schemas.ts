import { z } from '../entry/field.ts';
import { head } from './head.ts';
import { receipt } from './receipt.ts';

/** A receipt and a signed head as JSON Schema (draft 2020-12): the other lines of a book, for readers that are not ours. */
export const chainSchemas = (): { readonly receipt: unknown; readonly head: unknown } => ({
  receipt: { $id: 'clampwright-receipt-1', title: 'Receipt of an entry', ...z.toJSONSchema(receipt, { unrepresentable: 'any' }) },
  head: { $id: 'clampwright-head-1', title: 'Signed head of a device’s chain', ...z.toJSONSchema(head, { unrepresentable: 'any' }) },
});
