import type { Notice, NoticeCode } from '@clampwright/core';
import { changeYaml, type JointColumn, yamlOf } from '@clampwright/papers/edit';
import type { OfficeKey } from '@clampwright/words/office';
import { change, desk } from '../../../draft/desk.ts';
import { type Files, withFiles } from '../../../draft/draft.ts';
import { planning } from '../../../planning/planning.ts';
import { addColumn, changeCells, csvOf } from '../define/csv-file.ts';
import type { DefinePart } from '../define/define-page.tsx';
import { columnOf, headingOf, listFile } from '../define/joint-list.ts';

/** Where a thing is mended: a column of the joint list, or a part of the job. */
type Place = { readonly field: JointColumn } | { readonly part: Exclude<DefinePart, 'joints'> };

/** Where each reason is mended. What stands in none of these is mended at the joint's row. */
const PLACES: Readonly<Partial<Record<NoticeCode, Place>>> = {
  'datum-missing': { field: 'boltOne' },
  'permit-missing': { field: 'permit' },
  'zone-missing': { field: 'zone' },
  'hot-work-missing': { field: 'hotWorkPermit' },
  'lot-unknown': { field: 'lot' },
  'lot-failed': { part: 'lots' },
  'lot-untested': { part: 'lots' },
  'turned-not-tested': { field: 'turned' },
  'wet-retest': { part: 'job' },
  'k-class-needed': { part: 'lots' },
  'k-class-insufficient': { part: 'lots' },
  'friction-unknown': { part: 'lots' },
  'friction-from-table': { part: 'lots' },
  'coefficients-needed': { part: 'lots' },
  'tested-torque-needed': { part: 'lots' },
  'clamp-thickness-needed': { field: 'clamp' },
  'bolt-length-needed': { field: 'length' },
  'bolt-too-short': { field: 'length' },
  'bolt-below-clamp': { field: 'length' },
  'clamp-below-thread': { field: 'length' },
  'angle-not-tabulated': { field: 'clamp' },
  'assembly-needed': { field: 'system' },
  'system-needed': { field: 'system' },
  'bolt-stress-needed': { field: 'boltStress' },
  'bolt-stress-above-yield': { field: 'boltStress' },
  'bolt-stress-high': { field: 'boltStress' },
  'figure-needed': { field: 'torque' },
  'preload-basis-needed': { field: 'preload' },
  'rule-unknown': { field: 'rule' },
  'edition-unknown': { field: 'edition' },
  'grade-not-preloadable': { field: 'grade' },
  'structural-size-too-small': { field: 'size' },
  'size-not-in-table': { field: 'size' },
  'no-tool': { part: 'tools' },
  'tool-unknown': { field: 'tools' },
  'several-tools': { field: 'tools' },
  'tool-chart-faulty': { part: 'tools' },
  'arm-length-unknown': { part: 'tools' },
  'arm-overloaded': { part: 'tools' },
  'socket-unknown': { part: 'tools' },
  'socket-does-not-fit': { part: 'tools' },
  'socket-meets-wall': { field: 'wall' },
  'reaction-point-unknown': { field: 'reactionPoint' },
  'reaction-point-overloaded': { field: 'reactionLimit' },
  'positions-wrong': { field: 'positions' },
  'sequence-wrong': { field: 'sequence' },
  'tools-at-once-wrong': { field: 'toolsAtOnce' },
  'qualification-expired': { part: 'people' },
  'members-unknown': { part: 'members' },
  'gasket-modulus-needed': { part: 'members' },
  'gasket-modulus-assumed': { part: 'members' },
  'gasket-load-above': { part: 'members' },
  'gasket-load-below': { part: 'members' },
  'uneven-by-custom': { part: 'members' },
  'uneven-still': { part: 'members' },
  'above-target-refused': { part: 'members' },
  'batteries-too-few': { part: 'batteries' },
  'batteries-too-weak': { part: 'batteries' },
  'battery-low': { part: 'batteries' },
  'battery-cannot-push': { part: 'batteries' },
  'battery-no-working': { part: 'batteries' },
};

/** What a planner says with one touch, for the whole job; each is a change of the draft. */
export const SAID_AT_ONCE: Readonly<Partial<Record<NoticeCode, { readonly label: OfficeKey; readonly run: () => void }>>> = {
  'zone-missing': {
    label: 'sheet.zone-none',
    run: () =>
      change((files) =>
        withFiles(files, {
          'job.yaml': changeYaml(files.get('job.yaml')!, [{ kind: 'set', path: ['conditions', 'zone'], value: 'none' }]),
        }),
      ),
  },
};

/** The page on which a thing is mended; a column that the list lacks is added, to be filled there. */
export function placeOf({ notice, tags }: { readonly notice: Notice; readonly tags: readonly string[] }): {
  readonly href: string;
  readonly prepare: () => void;
} {
  const place = PLACES[notice.code] ?? byParams(notice);
  const [tag] = tags;
  if (place && 'part' in place) return { href: `/office/define/${place.part}${whichOf(place.part, notice)}`, prepare: () => undefined };
  const field = place?.field;
  return {
    href: `/office/define/joints/${encodeURIComponent(tag ?? '')}${field === undefined ? '' : `~${field}`}`,
    prepare: () => {
      if (field !== undefined) withField(field);
    },
  };
}

const byParams = ({ params }: Notice): Place | undefined =>
  'serial' in params || 'tool' in params ? { part: 'tools' } : 'lot' in params ? { part: 'lots' } : undefined;

/** The row or the tool that a reason names. */
function whichOf(part: DefinePart, { params }: Notice): string {
  const given = params as Readonly<Record<string, unknown>>;
  const files = desk.get()?.draft.files;
  const job = files?.get('job.yaml');
  if (part === 'tools') return given.serial === undefined ? '' : `/${encodeURIComponent(String(given.serial))}`;
  const list = part === 'lots' ? 'lots' : part === 'people' ? 'people' : undefined;
  const name = part === 'lots' ? given.lot : given.person;
  if (list === undefined || name === undefined || !job) return '';
  const rows =
    (yamlOf(job) as Readonly<Record<string, readonly { readonly id?: string; readonly name?: string }[]>> | undefined)?.[list] ?? [];
  const at = rows.findIndex((one) => one.id === name || one.name === name);
  return at < 0 ? '' : `/${at}`;
}

interface OpenList {
  readonly file: string;
  readonly files: Files;
  readonly head: number;
}

function openList(): OpenList | undefined {
  const files = desk.get()?.draft.files;
  const list = planning.get().view?.list;
  return files && list ? { file: listFile(files), files, head: list.row } : undefined;
}

/** The column of a field; added where the list has none. */
function withField(field: JointColumn): number {
  const list = planning.get().view?.list;
  const known = columnOf(list, field);
  const open = openList();
  if (known >= 0 || !open) return known;
  const heading = headingOf(field, open.files);
  const headings = csvOf(open.files.get(open.file))?.records[open.head - 1]?.cells ?? [];
  // added a moment ago, and not planned yet
  const there = headings.indexOf(heading);
  if (there >= 0) return there;
  addColumn(open.file, open.head, heading);
  return headings.length;
}

/** Writes one value into a column at every row of some joints: one step to take back. */
export function setField(field: JointColumn, tags: readonly string[], text: string): void {
  const tagAt = columnOf(planning.get().view?.list, 'tag');
  const col = withField(field);
  const open = openList();
  if (!open || tagAt < 0 || col < 0) return;
  const wanted = new Set(tags);
  const rows = csvOf(open.files.get(open.file))?.records.slice(open.head) ?? [];
  changeCells(
    open.file,
    open.head,
    rows.flatMap(({ cells }, row) => (wanted.has(cells[tagAt] ?? '') ? [{ row, col, text }] : [])),
  );
}
