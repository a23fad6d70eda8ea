import type { CivilDate } from '../date.ts';
import type { NewtonMillimetre } from '../quantity.ts';

/** Every tool that turns to a chart, and those refused for now. */
export type ToolKind = 'battery' | 'electric' | 'pneumatic' | 'hydraulic' | 'torque multiplier' | 'click wrench';

/** One line of a certificate: what the tool's labels say, and the torque measured there. */
export interface Setting {
  /** the label pair or the one scale, as printed on the tool: `['2', '7']` (gear, step), `['310']` (pump pressure). No arithmetic. */
  readonly labels: readonly string[];
  /** mean of the shots measured at this setting */
  readonly torque: NewtonMillimetre;
  /** relative standard deviation of those shots, where the certificate gives it */
  readonly deviation?: number;
  readonly shots?: number;
  /** set by the owner for loosening alone: never offered for tightening */
  readonly looseningOnly?: boolean;
  /** row of the chart's file, for messages */
  readonly row?: number;
}

/** The measured table settings → torque of one serial number, from one calibration. */
export interface SettingChart {
  /** what each label stands for: gear and step, or one pressure or scale with its unit */
  readonly scales: readonly Scale[];
  readonly settings: readonly Setting[];
  readonly certificate: Certificate;
  /** stated repeatability, ± share of reading, taken as two standard deviations; 0.04 is usual for such tools (common practice, no source) */
  readonly repeatability: number;
  /** the owner allows linear interpolation between neighbouring settings of one gear */
  readonly interpolation: boolean;
}

export interface Scale {
  readonly name: string;
  /** unit printed behind the label: `bar` */
  readonly unit?: string;
}

export interface Certificate {
  readonly number: string;
  /** serial number on the certificate; must be the tool's own */
  readonly serial: string;
  readonly calibrated: CivilDate;
  readonly due: CivilDate;
  /** expanded uncertainty, share of reading, k = 2 */
  readonly uncertainty: number;
  readonly jointRate?: 'hard' | 'soft';
  /** who calibrated it, against which reference standard, through which accessories, turning which way: as the paper says */
  readonly laboratory?: string;
  readonly reference?: string;
  readonly adapter?: string;
  readonly direction?: 'tightening' | 'loosening' | 'both';
  /** picture or scan of it: the file's name, and the SHA-256 of its bytes */
  readonly photo?: { readonly file: string; readonly hash: string };
}

/** All labels but the last name the gear; settings of one gear form a scale of their own. */
export const gearOf = (setting: Setting): string => setting.labels.slice(0, -1).join(' ');

/** `gear 2, step 7`, `pump pressure 480 bar`: how a setting is written, with what its labels stand for. */
export const settingText = ({ scales }: Pick<SettingChart, 'scales'>, labels: readonly string[]): string =>
  labels.map((label, i) => [scales[i]?.name, label, scales[i]?.unit].filter(Boolean).join(' ')).join(', ');
