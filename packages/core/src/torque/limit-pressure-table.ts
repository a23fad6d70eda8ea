/** A material of clamped parts: its names, its tensile strength as the list gives it, and its limit pressure; MPa. */
export interface LimitPressureEntry {
  readonly names: readonly string[];
  readonly tensile: number;
  readonly limit: number;
}

const entry = (tensile: number, limit: number, ...names: string[]): LimitPressureEntry => ({ names, tensile, limit });

/** VDI 2230-1:2003 Table A9, from a published reproduction. */
export const LIMIT_PRESSURES_2003: readonly LimitPressureEntry[] = [
  entry(340, 490, 'S235', 'S235JR', 'USt 37-2'),
  entry(470, 710, 'E295', 'St 50-2'),
  entry(510, 760, 'S355', 'S355J2', 'S355JO', 'St 52-3 U'),
  entry(700, 630, 'C45', 'C45V', 'Cq 45'),
  entry(1000, 870, '34CrMo4'),
  entry(1200, 1080, '34CrNiMo6'),
  entry(900, 810, '38MnSiVS5', '38MnSiVS5-BY'),
  entry(1000, 900, '16MnCr5'),
  entry(500, 630, 'X5CrNi18-12'),
  entry(510, 460, 'X5CrNiMo17-12-2'),
  entry(960, 860, 'X5NiCrTi26-15'),
  entry(1000, 700, 'NiCr20TiAl'),
  entry(250, 900, 'EN-GJL-250', 'GG 25'),
  entry(400, 700, 'EN-GJS-400', 'GGG 40'),
  entry(500, 900, 'EN-GJS-500', 'GGG 50'),
  entry(600, 1000, 'EN-GJS-600', 'GGG 60'),
  entry(290, 260, 'EN AW-6082 (Rm 290)', 'EN AW-6082', 'AlMgSi1 F31'),
  entry(260, 230, 'EN AW-6082 (Rm 260)', 'AlMgSi1 F28'),
  entry(260, 230, 'EN AW-5083', 'AlMg4.5Mn'),
  entry(540, 410, 'EN AW-7075', 'AlZnMgCu1.5'),
  entry(180, 220, 'G-AlSi9Cu3 sand/gravity', 'G-AlSi9Cu3', 'GK-AlSi9Cu3'),
  entry(240, 290, 'GD-AlSi9Cu3 die cast', 'GD-AlSi9Cu3', 'G-AlSi9Cu3 die cast'),
  entry(300, 380, 'G-AlSi7Mg', 'GK-AlSi7Mg wa', 'AlSi7Mg'),
  entry(310, 280, 'AZ91', 'AZ 91 T4'),
  entry(890, 890, 'TiAl6V4'),
];

/** VDI 2230:1986. The last six lines from memory. */
export const LIMIT_PRESSURES_1986: readonly LimitPressureEntry[] = [
  entry(370, 260, 'St37'),
  entry(500, 420, 'St50'),
  entry(800, 700, 'C45'),
  entry(1000, 850, '42CrMo4'),
  entry(1200, 750, '30CrNiMo8'),
  entry(600, 210, 'X5CrNiMo18-10'),
  entry(625, 220, 'X10CrNiMo18-9'),
  entry(465, 300, 'titanium, unalloyed', 'titanium'),
  entry(150, 600, 'GG15'),
  entry(250, 800, 'GG25'),
  entry(350, 900, 'GG35'),
  entry(400, 1100, 'GG40'),
  entry(350, 480, 'GGG35.3'),
  entry(300, 220, 'GD-MgAl9'),
  entry(200, 140, 'GK-MgAl9'),
  entry(200, 200, 'GK-AlSi6Cu4'),
  entry(450, 370, 'AlZnMgCu0.5'),
  entry(160, 140, 'Al99'),
];
