import {
  type Battery,
  batteryNotices,
  type Job,
  Nm,
  type Notice,
  notice,
  type Outcome,
  roadChargingNotices,
  type SettingChart,
  socketCurrent,
  type Tool,
} from '@clampwright/core';
import type { z } from 'zod';
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
export function readTools(open: OpenFile, file: string, memory: HeadingMemory, notices: Notice[]): ReadTools {
  const bytes = load(open, file);
  const read = bytes.ok ? readYaml(bytes.value, file, toolsSchema) : bytes;
  if (!read.ok) {
    notices.push(...read.notices);
    return { tools: [], batteries: [] };
  }
  const { value, at } = read.value;
  notices.push(...read.value.notices);
  const { charger } = value;
  if (charger?.['vehicle-fuse'] !== undefined) notices.push(...roadChargingNotices(vehicleCurrent(charger.watts), charger['vehicle-fuse']));
  return {
    tools: eachTool(open, read.value, memory, notices),
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

function eachTool(
  open: OpenFile,
  { value, at }: YamlValue<z.output<typeof toolsSchema>>,
  memory: HeadingMemory,
  notices: Notice[],
): Tool[] {
  const seen = new Set<string>();
  return value.tools.flatMap((given, index): Tool[] => {
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
    const chartBytes = load(open, entry.chart, at([...here, 'chart']));
    const chart = chartBytes.ok
      ? readChart(chartBytes.value, entry.chart, memory)
      : { scales: [], settings: [], notices: chartBytes.notices };
    notices.push(...chart.notices);
    return [toolOf(entry, chart)];
  });
}

function toolOf(entry: ToolEntry, { scales, settings }: Pick<SettingChart, 'scales' | 'settings'>): Tool {
  const { number, serial, calibrated, due, uncertainty } = entry.certificate;
  const jointRate = entry.certificate['joint-rate'];
  return {
    serial: entry.serial,
    name: entry.name,
    kind: entry.kind,
    place: { file: entry.chart },
    sockets: entry.sockets.map((socket) => ({ acrossFlats: socket['across-flats'], outerDiameter: socket['outer-diameter'] })),
    chart: {
      scales,
      settings,
      repeatability: entry.repeatability,
      interpolation: entry.interpolation,
      certificate: { number, serial, calibrated, due, uncertainty, ...(jointRate === undefined ? {} : { jointRate }) },
    },
    ...stated<Pick<Tool, 'arm' | 'armRating'>>({ arm: entry.arm, armRating: entry['arm-rating'] }),
    ...(entry.peak ? { peak: { amperesPerTorque: entry.peak['amperes-per-100-N·m'] / Nm(100), cutOff: entry.peak['cut-off-volts'] } } : {}),
  };
}
