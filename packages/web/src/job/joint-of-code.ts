import { jointCode } from '@clampwright/papers/codes';
import type { Book } from './book.ts';

/**
 * The joint that a square on a tag or a card means; `another` where it is ours in form and of no joint of this job; undefined where it is
 * some other square.
 */
export function jointOfCode(book: Book, text: string): string | undefined {
  const card = /^CLAMPWRIGHT:CARD:([0-9A-F]{64})$/.exec(text)?.[1]?.toLowerCase();
  if (card !== undefined) return book.joints().find(({ plan }) => plan?.slice.card === card)?.joint ?? 'another';
  if (!/^CLAMPWRIGHT:JOINT:[0-9A-F]{32}$/.test(text)) return undefined;
  const { title = '', site = '' } = book.fold.state('book', 'book');
  const found = book.joints().find(({ tag }) => tag !== undefined && jointCode({ title, site }, { tag }) === text);
  return found?.joint ?? 'another';
}
