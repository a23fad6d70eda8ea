/** A joint list of any length out of a few patterns, as a spreadsheet would export it; invented figures. */
function jointList(joints: number, boltsPerJoint: number): Uint8Array {
  const head =
    'joint,rule set,layout,bolts,bolt circle [mm],size,grade,system,clamped thickness [mm],lot,reaction point,bolt 1,direction,seen from';
  const sizes = ['M16', 'M20', 'M24', 'M27', 'M30'];
  const rules = ['en1090-torque', 'en1090-combined'];
  const rows = Array.from(
    { length: joints },
    (_, i) =>
      `J${i + 1},${rules[i % 2]},ring,${boltsPerJoint},${4000 + (i % 7) * 50},${sizes[i % 5]},10.9,HV,${60 + (i % 9) * 5},LOT-${i % 3},flange edge,door,clockwise,inside`,
  );
  return new TextEncoder().encode(`${head}\n${rows.join('\n')}\n`);
}

const lots = [0.12, 0.125, 0.131]
  .map((k, i) => `  - { id: LOT-${i}, k-class: K2, k: ${k}, variation: 0.04, tested: true, source: suitability test }`)
  .join('\n');

const chart = `gear,step,torque [N·m]\n${Array.from({ length: 72 }, (_, i) => `${1 + Math.floor(i / 12)},${1 + (i % 12)},${Math.round(140 * 1.043 ** i)}`).join('\n')}\n`;

/** The files of a job folder around that list. */
export function jobFiles(joints: number, boltsPerJoint: number): ReadonlyMap<string, Uint8Array> {
  const text = (value: string) => new TextEncoder().encode(value);
  return new Map([
    ['job.yaml', text(`title: bench\nsite: bench\nwork-date: 2026-11-25\nconditions: { zone: none }\nlots:\n${lots}\n`)],
    ['joints.csv', jointList(joints, boltsPerJoint)],
    [
      'tools.yaml',
      text(
        'tools:\n  - { serial: T1, name: bench tool, kind: hydraulic, arm: 200 mm, repeatability: 3 %, chart: c.csv, certificate: { number: C1, serial: T1, calibrated: 2026-01-10, due: 2027-01-09, uncertainty: 1 % } }\n',
      ),
    ],
    ['c.csv', text(chart)],
  ]);
}
