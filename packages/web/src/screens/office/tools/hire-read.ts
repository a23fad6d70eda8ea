import { certificateNotices, type Notice } from '@clampwright/core';
import { type ReadEquipment, readToolStore } from '@clampwright/papers/read';
import { utf8 } from '@clampwright/record';
import { today } from '../../../job/today.ts';
import { typedCertificate } from './typed-certificate.ts';

/** What is typed of a tool and its certificate, as the paper says it. */
export const HIRE_FIELDS = [
  'serial',
  'name',
  'kind',
  'number',
  'certificate-serial',
  'laboratory',
  'reference',
  'adapter',
  'calibrated',
  'due',
  'uncertainty',
  'repeatability',
  'arm',
  'arm-rating',
  'across-flats',
  'outer-diameter',
] as const;
export type HireField = (typeof HIRE_FIELDS)[number];
export type Hired = Readonly<Record<HireField, string>>;

export interface HiredFiles {
  readonly chart: { readonly file: string; readonly bytes: Uint8Array };
  readonly photo: { readonly file: string; readonly bytes: Uint8Array } | undefined;
}

const FILE = 'tools.yaml';

/** Where each field stands in the file that the readers are given. */
const KEYS: Readonly<Record<string, HireField>> = {
  '"serial": ': 'serial',
  '"name": ': 'name',
  '"kind": ': 'kind',
  '"arm": ': 'arm',
  '"arm-rating": ': 'arm-rating',
  '"repeatability": ': 'repeatability',
  '"number": ': 'number',
  '"calibrated": ': 'calibrated',
  '"due": ': 'due',
  '"uncertainty": ': 'uncertainty',
  '"laboratory": ': 'laboratory',
  '"reference": ': 'reference',
  '"adapter": ': 'adapter',
  '"across-flats": ': 'across-flats',
  '"outer-diameter": ': 'outer-diameter',
};

/** JSON is YAML: a key a line, so that a notice's row says which field it means. */
function toolsFile(typed: Hired, { chart, photo }: HiredFiles): string {
  const said = <T extends Record<string, unknown>>(entries: T) =>
    Object.fromEntries(Object.entries(entries).filter(([, value]) => value !== ''));
  const socket = said({ 'across-flats': typed['across-flats'], 'outer-diameter': typed['outer-diameter'] });
  const tool = said({
    serial: typed.serial,
    name: typed.name,
    kind: typed.kind,
    arm: typed.arm,
    'arm-rating': typed['arm-rating'],
    repeatability: typed.repeatability,
    chart: chart.file,
  });
  const certificate = said({
    number: typed.number,
    serial: typed['certificate-serial'],
    calibrated: typed.calibrated,
    due: typed.due,
    uncertainty: typed.uncertainty,
    laboratory: typed.laboratory,
    reference: typed.reference,
    adapter: typed.adapter,
    direction: 'tightening',
    photo: photo?.file ?? '',
  });
  return JSON.stringify({ tools: [{ ...tool, certificate, sockets: Object.keys(socket).length === 0 ? [] : [socket] }] }, null, 1);
}

export interface HireRead {
  readonly tool: ReadEquipment['equipment'][number] | undefined;
  /** of a field, by its name */
  readonly ofField: ReadonlyMap<HireField, readonly Notice[]>;
  /** of the chart, with their places in it */
  readonly ofChart: readonly Notice[];
  /** of the whole */
  readonly rest: readonly Notice[];
}

/** Reads what was typed as the command line reads a folder: the same readers, the same faults. `typedBy` is named in what is said of it. */
export function readHire(typed: Hired, files: HiredFiles, typedBy: string): HireRead {
  const text = toolsFile(typed, files);
  const lines = text.split('\n');
  const { chart, photo } = files;
  const open = (path: string) =>
    path === FILE ? utf8(text) : path === chart.file ? chart.bytes : path === photo?.file ? photo.bytes : 'missing';
  const { equipment, notices } = readToolStore(open, FILE, today());
  const tool = equipment[0];
  const said = tool ? [...notices, ...certificateNotices(typedCertificate(tool.tool, typedBy), typed.serial, today())] : notices;
  const ofField = new Map<HireField, Notice[]>();
  const rest: Notice[] = [];
  for (const one of said.filter(({ code, place }) => code !== 'certificate-unchecked' && place?.file !== chart.file)) {
    const field = fieldOf(one, lines);
    if (field) ofField.set(field, [...(ofField.get(field) ?? []), one]);
    else rest.push(one);
  }
  return { tool, ofField, ofChart: said.filter(({ place }) => place?.file === chart.file), rest };
}

function fieldOf({ place }: Notice, lines: readonly string[]): HireField | undefined {
  if (place?.file !== FILE || place.row === undefined) return undefined;
  const line = (lines[place.row - 1] ?? '').trim();
  const key = Object.keys(KEYS).find((one) => line.startsWith(one));
  if (key === undefined) return undefined;
  // the certificate has a serial number of its own
  const inCertificate = lines.slice(0, place.row).some((one) => one.includes('"certificate": {'));
  return key === '"serial": ' && inCertificate ? 'certificate-serial' : KEYS[key];
}
