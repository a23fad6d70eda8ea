import { calibrationNotices } from '../chart/calibration.ts';
import { validateChart } from '../chart/validate-chart.ts';
import type { Job, Lot, Tool } from '../job/job.ts';
import { levelOf, type Notice } from '../notice/index.ts';
import { compareTags } from './compare-tags.ts';

/** A tool with what its chart and certificate allow on the work date, found once for the whole job. */
export interface ReadyTool {
  readonly tool: Tool;
  readonly notices: readonly Notice[];
  /** may be offered: chart without fault, calibration valid */
  readonly usable: boolean;
}

/** What all joints of a job share: looked up once, so that the cost of a joint does not depend on the size of the job. */
export interface Context {
  readonly job: Job;
  readonly tools: readonly ReadyTool[];
  readonly toolBySerial: ReadonlyMap<string, ReadyTool>;
  readonly lotById: ReadonlyMap<string, Lot>;
}

export function contextOf(job: Job): Context {
  // by serial number, so that no tie between tools depends on the order they were listed in
  const listed = [...job.tools].sort((a, b) => compareTags(a.serial, b.serial));
  const tools = listed.map((tool): ReadyTool => {
    const notices = [...validateChart(tool.chart, tool.serial, tool.place), ...calibrationNotices(tool.chart, tool.serial, job.workDate)];
    return { tool, notices, usable: notices.every(({ code }) => levelOf(code) === 'attention') };
  });
  return {
    job,
    tools,
    toolBySerial: new Map(tools.map((ready) => [ready.tool.serial, ready])),
    lotById: new Map(job.lots.map((lot) => [lot.id, lot])),
  };
}
