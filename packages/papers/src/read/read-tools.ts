import {
  type Battery,
  batteryNotices,
  type Certificate,
  type CivilDate,
  type Job,
  Nm,
  type Notice,
  notice,
  type Outcome,
  type Place,
  roadChargingNotices,
  type SettingChart,
  socketCurrent,
  type Tool,
} from '@clampwright/core';
import { hashOf } from '@clampwright/record';
import type { z } from 'zod';
import { type CertificateVersion, onTheDay, readCertificates } from './certificate-list.ts';
import type { HeadingMemory } from './heading-memory.ts';
import { batterySchema, toolSchema, toolsSchema } from './job-yaml.ts';
import { load, type OpenFile } from './open-file.ts';
import { readChart } from './read-chart.ts';
import { stated } from './stated.ts';
import { checkValue, readYaml, type YamlValue } from './yaml-file.ts';

type ToolEntry = z.output<typeof toolSchema>;

/** What tools.yaml says. */
export interface ReadTools {
  readonly tools: readonly Tool[];
  readonly batteries: readonly Battery[];
  readonly charger?: NonNullable<Job['charger']>;
}

/** The tools of tools.yaml with their charts, one by one, and the batteries. A tool whose chart cannot be had stays in the list, without a setting. */
export function readTools(open: OpenFile, file: string, day: CivilDate, memory: HeadingMemory, notices: Notice[]): ReadTools {
  const bytes = load(open, file);
  const read = bytes.ok ? readYaml(bytes.value, file, toolsSchema) : bytes;
  if (!read.ok) {
    notices.push(...read.notices);
    return { tools: [], batteries: [] };
  }
  const { value, at } = read.value;
  notices.push(...read.value.notices);
  const { charger } = value;
  const listed = value.certificates === undefined ? [] : readCertificates(open, value.certificates, memory, notices);
  if (charger?.['vehicle-fuse'] !== undefined) notices.push(...roadChargingNotices(vehicleCurrent(charger.watts), charger['vehicle-fuse']));
  return {
    tools: eachTool(read.value, { open, memory, day, listed }, notices),
    batteries: value.batteries.flatMap((given, index) => batteryOf(checkValue(batterySchema, given, at, ['batteries', index]), notices)),
    ...(charger ? { charger: { watts: charger.watts, taperMinutes: charger['taper-minutes'] } } : {}),
  };
}

/** Usual efficiencies of charger and inverter, and the volts of a car. Common practice, no source. */
const ROAD = { chargerEfficiency: 0.85, inverterEfficiency: 0.88, vehicleVolts: 12 } as const;
const vehicleCurrent = (watts: number) => socketCurrent({ ...ROAD, chargeCurrent: watts, batteryVolts: 1 });

function batteryOf(entry: Outcome<z.output<typeof batterySchema>>, notices: Notice[]): Battery[] {
  if (!entry.ok) {
    notices.push(...entry.notices);
    return [];
  }
  const { 'ampere-hours': ampereHours, 'never-charged': neverCharged, lit, cells, ...rest } = entry.value;
  notices.push(...batteryNotices({ ...rest, lit, neverCharged, charging: false }));
  return [
    {
      ...rest,
      ampereHours,
      lit: lit as Battery['lit'],
      neverCharged,
      ...(cells ? { cells: { series: cells.series, parallel: cells.parallel, resistance: cells.milliohms / 1000 } } : {}),
    },
  ];
}

/** What the tools of a list are read with. */
interface Around {
  readonly open: OpenFile;
  readonly memory: HeadingMemory;
  readonly day: CivilDate;
  /** out of the list of certificates */
  readonly listed: readonly CertificateVersion[];
}

function eachTool({ value, at }: YamlValue<z.output<typeof toolsSchema>>, around: Around, notices: Notice[]): Tool[] {
  const seen = new Set<string>();
  const tools = value.tools.flatMap((given, index): Tool[] => {
    const here = ['tools', index];
    const checked = checkValue(toolSchema, given, at, here);
    if (!checked.ok) {
      notices.push(...checked.notices);
      return [];
    }
    const entry = checked.value;
    if (seen.has(entry.serial)) {
      notices.push(notice('serial-twice', { serial: entry.serial }, at([...here, 'serial'])));
      return [];
    }
    seen.add(entry.serial);
    const versions = versionsOf(entry, around.listed, (path) => at([...here, ...path]));
    if (versions.length === 0) {
      notices.push(notice('certificate-missing', { serial: entry.serial }, at(here)));
      return [];
    }
    const chosen = onTheDay(versions, around.day);
    if (!chosen.ok) {
      notices.push(...chosen.notices.map((one) => ({ ...one, place: at(here) })));
      return [];
    }
    const file = chosen.value.chart;
    const chartBytes = load(around.open, file, at([...here, 'chart']));
    const chart = chartBytes.ok
      ? readChart(chartBytes.value, file, around.memory)
      : { scales: [], settings: [], notices: chartBytes.notices };
    notices.push(...chart.notices);
    const photos = versions.map((version) => photoOf(version, around.open, notices));
    return [toolOf(entry, chosen.value, versions, chart, photos[versions.indexOf(chosen.value)])];
  });
  for (const { serial } of around.listed)
    if (!seen.has(serial)) notices.push(notice('certificate-of-no-tool', { serial }, { file: value.certificates! }));
  return tools;
}

/** Every certificate that is told of a tool, wherever it stands. */
function versionsOf(
  entry: ToolEntry,
  listed: readonly CertificateVersion[],
  at: (path: readonly PropertyKey[]) => Place,
): CertificateVersion[] {
  const own = entry.certificate && entry.chart !== undefined ? [{ ...entry.certificate, chart: entry.chart, path: ['certificate'] }] : [];
  const more = entry.certificates.map((one, index) => ({ ...one, path: ['certificates', index] }));
  const written = [...own, ...more].map(({ 'joint-rate': jointRate, photo, path, ...rest }) =>
    stated<CertificateVersion>({
      ...rest,
      jointRate,
      photo: photo === undefined ? undefined : { file: photo, place: at([...path, 'photo']) },
    }),
  );
  return [...written, ...listed.filter(({ serial }) => serial === entry.serial)];
}

/** The picture of a certificate by the hash of its bytes; one that cannot be had is a fault. */
function photoOf({ photo }: CertificateVersion, open: OpenFile, notices: Notice[]): Certificate['photo'] {
  const bytes = photo && load(open, photo.file, photo.place);
  if (!bytes?.ok) notices.push(...(bytes?.notices ?? []));
  return photo && bytes?.ok ? { file: photo.file, hash: hashOf(bytes.value) } : undefined;
}

function toolOf(
  entry: ToolEntry,
  { chart: file, ...version }: CertificateVersion,
  versions: readonly CertificateVersion[],
  { scales, settings }: Pick<SettingChart, 'scales' | 'settings'>,
  photo: Certificate['photo'],
): Tool {
  const { number, serial, calibrated, due, uncertainty, jointRate, laboratory, reference, adapter, direction } = version;
  const certificate = {
    number,
    serial,
    calibrated,
    due,
    uncertainty,
    ...stated<Pick<Certificate, 'jointRate' | 'photo' | 'laboratory' | 'reference' | 'adapter' | 'direction'>>({
      jointRate,
      photo,
      laboratory,
      reference,
      adapter,
      direction,
    }),
  };
  return {
    serial: entry.serial,
    name: entry.name,
    kind: entry.kind,
    place: { file },
    sockets: entry.sockets.map((socket) => ({ acrossFlats: socket['across-flats'], outerDiameter: socket['outer-diameter'] })),
    chart: { scales, settings, repeatability: entry.repeatability, interpolation: entry.interpolation, certificate },
    ...(versions.length > 1
      ? { certificates: versions.map(({ number, calibrated, due, chart }) => ({ number, calibrated, due, chart })) }
      : {}),
    ...stated<Pick<Tool, 'arm' | 'armRating'>>({ arm: entry.arm, armRating: entry['arm-rating'] }),
    ...(entry.peak ? { peak: { amperesPerTorque: entry.peak['amperes-per-100-N·m'] / Nm(100), cutOff: entry.peak['cut-off-volts'] } } : {}),
  };
}
