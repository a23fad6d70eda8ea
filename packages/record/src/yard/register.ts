import type { Battery, Tool } from '@clampwright/core';
import { type Hash, hashOf } from '../bytes/hash.ts';
import { utf8 } from '../bytes/text.ts';
import type { BodyOf } from '../entry/kinds/index.ts';
import type { Fold } from '../fold/fold.ts';

/** A tool as read, with the bytes of its chart's file, and of the picture of its certificate. */
export interface ReadTool {
  readonly tool: Tool;
  readonly chart: Uint8Array;
  readonly photo?: { readonly file: string; readonly bytes: Uint8Array };
}

type YardKind = 'tool-registered' | 'chart-loaded' | 'imported' | 'battery-registered';
/** An entry for the book of the yard, with the bytes to be kept beside it. */
export type YardEntry = {
  [K in YardKind]: { readonly kind: K; readonly body: BodyOf<K>; readonly attachments: readonly Uint8Array[] };
}[YardKind];

/** As long as an entry takes. */
const labelOf = (text: string): string => text.slice(0, 120);
const nameOf = ({ volts, ampereHours }: Battery): string => `${volts} V, ${ampereHours} A·h`;
const sheetOf = (tool: Tool): Uint8Array => utf8(JSON.stringify(tool));

/** Does the book of the yard lack this tool, or say something else of it? One that was withdrawn comes back by another certificate only. */
export function isToolNews(fold: Fold, { tool: { serial, name, chart }, chart: bytes }: ReadTool): boolean {
  if (!fold.ids('tool').includes(serial)) return true;
  const there = fold.state('tool', serial);
  const { number, due } = chart.certificate;
  return (
    (!there.withdrawn && there.name !== labelOf(name)) ||
    there.certificate !== number ||
    there.due !== due ||
    there.chart !== hashOf(bytes) ||
    there.sheet === undefined
  );
}

/** Is the picture of the certificate not kept yet? */
export const isPhotoNews = (fold: Fold, { photo }: ReadTool): boolean =>
  photo !== undefined && !fold.state('book', 'book').imports.some(({ file }) => file === hashOf(photo.bytes));

export const isBatteryNews = (fold: Fold, battery: Battery): boolean => fold.state('battery', battery.serial).name !== nameOf(battery);

/** A tool comes into the book of the yard, with the file of its chart. */
export function toolEntry({ tool, chart: bytes }: ReadTool): YardEntry {
  const { serial, name, kind, chart } = tool;
  const { number, due } = chart.certificate;
  const body = { tool: serial, name: labelOf(name), kind, chart: hashOf(bytes), certificate: number, due };
  return { kind: 'tool-registered', body, attachments: [bytes] };
}

/** A tool whose certificate somebody typed: its settings wait for another person, who reads them back. */
export function typedToolEntry(read: ReadTool): YardEntry {
  const entry = toolEntry(read);
  const sheet = sheetOf(read.tool);
  return { ...entry, body: { ...entry.body, sheet: hashOf(sheet) }, attachments: [...entry.attachments, sheet] } as YardEntry;
}

/** The chart as read: what a phone without network takes the tool's settings from. Whoever holds it against the paper tells it. */
export function chartEntry(tool: Tool): YardEntry {
  const sheet = sheetOf(tool);
  return {
    kind: 'chart-loaded',
    body: { tool: tool.serial, certificate: tool.chart.certificate.number, sheet: hashOf(sheet) },
    attachments: [sheet],
  };
}

/** The picture of a tool's certificate. */
export function photoEntry({ serial, chart }: Tool, { file, bytes }: NonNullable<ReadTool['photo']>): YardEntry {
  const text = `certificate ${chart.certificate.number} of tool ${serial}`;
  return { kind: 'imported', body: { file: hashOf(bytes) as Hash, name: file.slice(-120), text }, attachments: [bytes] };
}

export const batteryEntry = (battery: Battery): YardEntry => ({
  kind: 'battery-registered',
  body: {
    battery: battery.serial,
    name: nameOf(battery),
    chargeMilliampereHour: Math.round(1000 * battery.ampereHours),
  },
  attachments: [],
});
