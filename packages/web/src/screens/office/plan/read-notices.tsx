import type { Notice } from '@clampwright/core';
import { Link } from 'wouter';
import { useOffice } from '../../../language/office-speech.tsx';
import { NoticeList } from '../shell/notice-list.tsx';
import css from './plan-page.module.css';

const MOST_SHOWN = 40;

/** What was said while the files were read, each with the way to its place. */
export function ReadNotices({ notices }: { readonly notices: readonly Notice[] }) {
  const say = useOffice();
  return (
    <details className={css.read}>
      <summary>{say('sheet.read-with', { count: notices.length })}</summary>
      <NoticeList
        notices={notices}
        most={MOST_SHOWN}
        place={(one, named) => <Link href={placeOf(one)}>{named || say('office.page-define')}</Link>}
      />
    </details>
  );
}

const cellQuery = (row: number, column: string | undefined) =>
  new URLSearchParams({ row: String(row), ...(column === undefined ? {} : { column }) });

/** The page on which a file is mended: a list in its table, all else as it is made. */
function placeOf({ place }: Notice): string {
  const { file, path } = place ?? {};
  const [first, index] = path?.split(' → ') ?? [];
  const row = index === undefined || !/^\d+$/.test(index) ? '' : `/${index}`;
  if (file === 'job.yaml') return `/office/define/${first === 'people' || first === 'lots' ? `${first}${row}` : 'job'}`;
  if (file === 'tools.yaml') return `/office/define/${first === 'batteries' ? `batteries${row}` : 'tools'}`;
  if (file === 'members.yaml') return '/office/define/members';
  if (file !== undefined && !file.startsWith('joints.')) return `/office/define/files/${encodeURIComponent(file)}`;
  return `/office/define${place?.row === undefined ? '' : `?${cellQuery(place.row, place.column)}`}`;
}
