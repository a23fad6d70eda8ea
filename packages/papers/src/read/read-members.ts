import { type GasketGiven, type Joint, type Members, type Notice, notice, type Outcome, type Place, refused } from '@clampwright/core';
import type { z } from 'zod';
import { csvRows } from './csv-rows.ts';
import { decode } from './decode.ts';
import { membersFileSchema, membersSchema } from './members-yaml.ts';
import { load, type OpenFile } from './open-file.ts';
import type { Row } from './row.ts';
import { stated } from './stated.ts';
import { checkValue, readYaml } from './yaml-file.ts';

type Entry = z.output<typeof membersSchema>;

/** Adds to the joints what members.yaml says of them; a folder without one has joints whose members are not known. Faults lose an entry, never a joint. */
export function addMembers(open: OpenFile, file: string, joints: readonly Joint[], notices: Notice[]): Joint[] {
  const bytes = open(file) === 'missing' && file === 'members.yaml' ? undefined : load(open, file);
  if (!bytes) return [...joints];
  const read = bytes.ok ? readYaml(bytes.value, file, membersFileSchema) : bytes;
  if (!read.ok) {
    notices.push(...read.notices);
    return [...joints];
  }
  const { value, at } = read.value;
  notices.push(...read.value.notices);
  const byTag = new Map(joints.map((joint) => [joint.tag, joint]));
  const said = new Map<string, Place>();
  for (const [index, given] of value.members.entries()) {
    const here = ['members', index];
    const entry = checkValue(membersSchema, given, at, here);
    if (!entry.ok) {
      notices.push(...entry.notices);
      continue;
    }
    for (const [i, tag] of entry.value.joints.entries()) {
      const place = at([...here, 'joints', i]);
      const joint = byTag.get(tag);
      if (!joint) notices.push(notice('members-joint-unknown', { joint: tag }, place));
      else if (said.has(tag)) notices.push(notice('members-twice', { joint: tag }, place));
      else {
        said.set(tag, place);
        const members = membersOf(open, entry.value, joint, place, at([...here, 'matrix']));
        if (members.ok) byTag.set(tag, withMembers(joint, entry.value, members.value));
        else notices.push(...members.notices);
      }
    }
  }
  return joints.map(({ tag }) => byTag.get(tag)!);
}

const withMembers = (joint: Joint, entry: Entry, members: Members): Joint => ({
  ...joint,
  members,
  ...stated<Pick<Joint, 'evenness' | 'greatestForce'>>({ evenness: entry.evenness, greatestForce: entry['greatest-bolt-force'] }),
});

function membersOf(open: OpenFile, entry: Entry, joint: Joint, place: Place, matrixPlace: Place): Outcome<Members> {
  if (entry.matrix !== undefined) return matrixOf(open, entry.matrix, entry['matrix-source'] ?? 'given by the user', matrixPlace);
  if (entry.plates) {
    const { 'bed-thickness': thickness, 'bed-modulus': modulus, ...plate } = entry.plates;
    return { ok: true, value: { kind: 'plates', ...plate, bed: { thickness, modulus } } };
  }
  const gasket = entry.gasket && gasketOf(entry.gasket);
  if (entry.ring) {
    const { wall, 'wall-side': side, 'hub-outer': outer, 'hub-length': length, land, ...ring } = entry.ring;
    const hub = outer !== undefined && length !== undefined ? { outer, length } : undefined;
    return {
      ok: true,
      value: {
        kind: 'ring',
        ...ring,
        wall: { thickness: wall, side },
        ...stated<{ hub: typeof hub; land: typeof land; gasket: typeof gasket }>({ hub, land, gasket }),
      } as Members,
    };
  }
  if (joint.flange === undefined || !gasket) return refused(notice('members-no-flange', { joint: joint.tag }, place));
  return { ok: true, value: { kind: 'standard flange', flange: joint.flange, gasket } };
}

const gasketOf = (given: NonNullable<Entry['gasket']>): GasketGiven => ({
  kind: given.kind,
  ...stated<Omit<GasketGiven, 'kind'>>({
    thickness: given.thickness,
    modulus: given.modulus,
    unloadingModulus: given['unloading-modulus'],
    inner: given.inner,
    outer: given.outer,
    leastStress: given['least-stress'],
    greatestStress: given['greatest-stress'],
  }),
});

/** A square of figures in mm/N: closing at the bolt of the row per newton in the bolt of the column, members alone. */
function matrixOf(open: OpenFile, file: string, source: string, place: Place): Outcome<Members> {
  const bytes = load(open, file, place);
  if (!bytes.ok) return bytes;
  const decoded = decode(bytes.value, file);
  if (!decoded.ok) return decoded;
  const delimiter = decoded.value.text.includes(';') ? ';' : ',';
  const table: Row[] = [];
  const broken = csvRows(decoded.value.text, delimiter, (row) => table.push(row));
  if (!broken || broken.length > 0) return refused(notice('csv-broken', { problem: 'rows that cannot be read' }, { file }));
  const figure = (cell: string) => Number(delimiter === ';' ? cell.replace(',', '.') : cell);
  const wrong = table.flatMap(({ row, cells }) =>
    cells.flatMap((cell, i) =>
      cell !== '' && Number.isFinite(figure(cell))
        ? []
        : [notice('number-wanted', { wanted: 'a figure in mm/N' }, { file, row, column: String(i + 1), read: cell.slice(0, 40) })],
    ),
  );
  if (wrong.length > 0) return refused(...wrong.slice(0, 20));
  const rows = table.map(({ cells }) => cells.map((cell) => figure(cell)));
  return { ok: true, value: { kind: 'matrix', rows, source: { standard: source, provenance: 'engineer' } } };
}
