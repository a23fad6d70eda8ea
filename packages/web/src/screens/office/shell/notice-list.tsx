import type { Notice } from '@clampwright/core';
import type { ReactNode } from 'react';
import { useOffice } from '../../../language/office-speech.tsx';
import { useNotice } from '../../../language/speech.tsx';
import { Soft } from '../../../ui/page.tsx';
import css from './notice-list.module.css';

interface NoticeListProps {
  readonly notices: readonly Notice[];
  /** so many are shown, and how many more there are is said */
  readonly most: number;
  /** the way to its place; else the place is named */
  readonly place?: (notice: Notice, named: string) => ReactNode;
}

/** What was said while files were read: where, what is wrong, what would mend it. */
export function NoticeList({ notices, most, place = (_, named) => <small>{named}</small> }: NoticeListProps) {
  const say = useOffice();
  const { says, remedy, whereabouts } = useNotice();
  return (
    <>
      <ul className={css.notices}>
        {notices.slice(0, most).map((one) => (
          <li key={`${one.code} ${whereabouts(one)} ${JSON.stringify(one.params)}`}>
            {place(one, whereabouts(one))}
            <p>
              {says(one)} <strong>{remedy(one)}</strong>
            </p>
          </li>
        ))}
      </ul>
      {notices.length > most ? <Soft>{say('list.more', { count: notices.length - most })}</Soft> : null}
    </>
  );
}
