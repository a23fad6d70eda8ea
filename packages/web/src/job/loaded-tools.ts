import type { Tool } from '@clampwright/core';
import type { Book } from './book.ts';

/** Every tool whose chart is on this device: of the plan's job, of the job's book, of the yard's. The latest calibration of a serial number counts. */
export function loadedTools(book: Book, yard: Book | undefined, plan: string | undefined): readonly Tool[] {
  const bySerial = new Map<string, Tool>();
  for (const tool of [...(book.jobOf(plan)?.tools ?? []), ...book.loadedTools(), ...(yard?.loadedTools() ?? [])]) {
    const known = bySerial.get(tool.serial);
    if (!known || known.chart.certificate.calibrated <= tool.chart.certificate.calibrated) bySerial.set(tool.serial, tool);
  }
  const gone = (serial: string) => [book, yard].some((one) => one?.fold.state('tool', serial).withdrawn);
  return [...bySerial.values()].filter(({ serial }) => !gone(serial)).sort((a, b) => a.serial.localeCompare(b.serial));
}
