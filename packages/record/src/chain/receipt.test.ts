import { expect, test } from 'vitest';
import { canonicalBytes, type Json } from '../bytes/canonical.ts';
import { testBook, testLog } from '../test-handover.ts';
import { readReceipt, receiptBytes } from './receipt.ts';

test('receiptBytes() are canonical, and read back', () => {
  for (const { receipt } of testLog(testBook(1)).rows) {
    expect(receiptBytes(receipt)).toEqual(canonicalBytes(receipt as Json));
    expect(readReceipt(receiptBytes(receipt))).toEqual({ ok: true, value: receipt });
  }
});
