import { useEffect, useState } from 'react';
import type { Book } from '../../../job/book.ts';
import { useAttachment } from '../../../job/use-attachment.ts';
import { useOffice } from '../../../language/office-speech.tsx';
import { Soft } from '../../../ui/page.tsx';
import own from './tools.module.css';

/** The picture of a certificate. */
export function Photo({ yard, hash }: { readonly yard: Book; readonly hash: string }) {
  const say = useOffice();
  const bytes = useAttachment(yard, hash);
  const [url, setUrl] = useState<string>();
  useEffect(() => {
    if (!(bytes instanceof Uint8Array)) return undefined;
    const made = URL.createObjectURL(new Blob([bytes as Uint8Array<ArrayBuffer>]));
    setUrl(made);
    return () => URL.revokeObjectURL(made);
  }, [bytes]);
  if (bytes === 'missing') return <Soft>{say('store.photo-missing')}</Soft>;
  return url === undefined ? null : <img src={url} alt={say('store.photo')} className={own.photo} />;
}
