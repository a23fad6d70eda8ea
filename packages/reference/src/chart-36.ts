/** 36 settings of one invented tool, N·m, neighbours at most 5 % apart: what schedules of several settings are tried with. */
export const CHART_36: readonly number[] = [
  300, 315, 330, 346, 363, 381, 400, 420, 440, 462, 485, 509, 534, 560, 588, 617, 647, 679, 712, 747, 784, 823, 864, 907, 952, 999, 1048,
  1100, 1155, 1212, 1272, 1335, 1401, 1471, 1544, 1621,
];
