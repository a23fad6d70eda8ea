import { findInchThread, findThread } from '@clampwright/core';

/** What a name says of a bolt: `M24x100 10.9 EN 14399-4`, `Bolt 3/4" x 3 A325`. Lengths in mm. */
export interface Named {
  readonly size?: string;
  readonly length?: number;
  readonly grade?: string;
  readonly standard?: string;
}

const METRIC = /(?:^|[^A-Z0-9])M\s?(\d{1,3}(?:[.,]\d)?)(?:\s*[x×*]\s*(\d{1,4}(?:[.,]\d)?))?(?![\d/])/i;
const INCH =
  /(?:^|[^\d/])((?:\d[\s-])?\d{1,2}\/\d{1,2}|\d)\s*(?:"|in\b|''|″)(?:\s*[x×]\s*((?:\d{1,2}[\s-])?\d{1,2}(?:\/\d{1,2})?)\s*(?:"|in\b|''|″)?)?/i;
const GRADE =
  /(?:^|[^\d.])(4\.6|4\.8|5\.6|5\.8|6\.8|8\.8|9\.8|10\.9|12\.9)(?![\d.])|\b(A325|A490|F1852|F2280|A307|A354\s?B[CD]|A449|B7M?|B16|B8M?)\b|\b(A[245]-(?:50|70|80|100))\b/i;
const STANDARD =
  /\b((?:DIN\s)?EN(?:\sISO)?\s?\d{3,5}(?:-\d{1,2})?|ISO\s?\d{3,5}(?:-\d)?|DIN\s?\d{3,5}|ASTM\s?[AF]\s?\d{3,4}|ASME\s?B18[.\d]*)\b/i;

/** Reads what stands in a name, and nothing more. */
export function readName(name: string): Named {
  const metric = METRIC.exec(name);
  const inch = metric ? null : INCH.exec(name);
  const grade = GRADE.exec(name);
  const standard = STANDARD.exec(name);
  const size = metric ? metricSize(Number(metric[1]!.replace(',', '.'))) : inch ? inchSize(inchNumber(inch[1]!)) : undefined;
  const length =
    metric?.[2] !== undefined ? Number(metric[2].replace(',', '.')) : inch?.[2] === undefined ? undefined : inchNumber(inch[2]) * 25.4;
  return {
    ...(size === undefined ? {} : { size }),
    ...(length === undefined || !(length > 0) ? {} : { length }),
    ...(grade ? { grade: (grade[1] ?? grade[2] ?? grade[3])!.toUpperCase() } : {}),
    ...(standard ? { standard: standard[1]!.toUpperCase().replace(/\s+/g, ' ') } : {}),
  };
}

/** `1 1/4`, `3/4`, `1-1/2` as a number. */
function inchNumber(written: string): number {
  return written
    .split(/[\s-]/)
    .map((part) => {
      const [above, below] = part.split('/').map(Number) as [number, number | undefined];
      return below === undefined ? above : above / below;
    })
    .reduce((sum, part) => sum + part, 0);
}

const FITS = 0.06;

/** The thread of a nominal diameter, mm: a size of one of the two systems, and no other. */
export const sizeOf = (diameter: number): string | undefined => metricSize(diameter) ?? inchSize(diameter / 25.4);

function metricSize(diameter: number): string | undefined {
  const size = `M${Math.round(diameter * 10) / 10}`;
  const found = findThread(size);
  return found.ok && Math.abs(found.value.diameter - diameter) < FITS ? size : undefined;
}

/** Eighths up to an inch and beyond, sixteenths below: as bolts are named. */
function inchSize(inches: number): string | undefined {
  const sixteenths = Math.round(inches * 16);
  if (Math.abs(sixteenths / 16 - inches) * 25.4 > FITS || sixteenths < 4 || sixteenths > 64) return undefined;
  const whole = Math.floor(sixteenths / 16);
  let [above, below] = [sixteenths % 16, 16];
  while (above > 0 && above % 2 === 0) [above, below] = [above / 2, below / 2];
  const fraction = above === 0 ? '' : `${above}/${below}`;
  const size = `${[whole === 0 ? '' : String(whole), fraction].filter(Boolean).join(' ')}"`;
  return findInchThread(size) ? size : undefined;
}

/** The assembly system that a standard stands for. Source: EN 14399, titles of parts 3, 4, 7, 8 and 10; EN 15048: not preloaded. */
export function systemOf(standard: string | undefined): 'HR' | 'HV' | 'HRC' | undefined {
  const part = /14399-(\d+)/.exec(standard ?? '')?.[1];
  return part === '3' || part === '7' ? 'HR' : part === '4' || part === '8' ? 'HV' : part === '10' ? 'HRC' : undefined;
}
