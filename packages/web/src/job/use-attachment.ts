import { useEffect, useState } from 'react';
import { useWorld } from '../ui/world-context.ts';
import { attachmentOf } from './attachment-of.ts';
import type { Book } from './book.ts';

/** Bytes that an entry of a book names; undefined while they are asked for, `missing` where nobody has them. */
export function useAttachment(book: Book | undefined, hash: string | undefined): Uint8Array | 'missing' | undefined {
  const world = useWorld();
  const [found, setFound] = useState<{ readonly hash: string; readonly bytes: Uint8Array | 'missing' }>();
  useEffect(() => {
    if (!world || !book || hash === undefined) return undefined;
    let asked = true;
    void attachmentOf(world, book, hash).then((bytes) => asked && setFound({ hash, bytes: bytes ?? 'missing' }));
    return () => {
      asked = false;
    };
  }, [world, book, hash]);
  return found?.hash === hash ? found?.bytes : undefined;
}
