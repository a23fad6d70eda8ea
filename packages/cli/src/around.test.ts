import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';

const ROOT = join(import.meta.dirname, '../../..');
const demo = join(ROOT, 'demo');
const folder = mkdtempSync(join(tmpdir(), 'clampwright-around-'));
afterAll(() => rmSync(folder, { recursive: true }));

function run(...args: string[]) {
  const { status, stdout, stderr } = spawnSync('node', [join(ROOT, 'packages/cli/dist/clampwright.mjs'), ...args], {
    encoding: 'utf8',
    cwd: folder,
  });
  return { status, stdout, stderr };
}

describe('loosen', () => {
  test('an interval, an order, what may be used again, and the holds', () => {
    const { status, stdout } = run('loosen', demo, '--state', 'painted', '--joint', 'PH-F1');
    expect(status).toBe(1);
    expect(stdout).toMatch(/PH-F1 +12 +7\/8-9 UNC A193 B7 +\d+ to \d+/);
    expect(stdout).toContain('isolation is proven');
    expect(stdout).toContain('ease every nut by about half');
  });
  test('with permit and name the hold is gone', () => {
    const { stdout } = run('loosen', demo, '--state', 'fresh', '--joint', 'PH-F1', '--released-by', 'Maren Hollow', '--json');
    const [joint] = JSON.parse(stdout);
    expect(joint.notices.map(({ code }: { readonly code: string }) => code)).not.toContain('loosening-release-missing');
    expect(joint.plan.breakaway.low).toBeLessThan(joint.plan.breakaway.high);
  });
  test('a joint that is not there, or a state that is none, is 2', () => {
    expect(run('loosen', demo, '--joint', 'XX').status).toBe(2);
    expect(run('loosen', demo, '--state', 'sticky').status).toBe(2);
  });
});

describe('valves', () => {
  test('stops by default, and says what is missing', () => {
    const { status, stdout } = run('valves', demo);
    expect(status).toBe(1);
    expect(stdout).toMatch(/GV-12 +opening +Stop/);
    expect(stdout).toContain('which way it opens is not entered');
  });
  test('a folder without valves is 2; a faulty entry is named with its line', () => {
    cpSync(demo, join(folder, 'job'), { recursive: true });
    const yaml = readFileSync(join(demo, 'valves.yaml'), 'utf8');
    writeFileSync(join(folder, 'job/valves.yaml'), yaml.replace('seat: 150 mm', 'seat: wide'));
    const faulty = run('valves', join(folder, 'job'));
    expect(faulty.stdout).toMatch(/valves\.yaml, row \d+.*seat/);
    expect(faulty.stdout).toContain('GV-12');
    rmSync(join(folder, 'job/valves.yaml'));
    expect(run('valves', join(folder, 'job')).status).toBe(2);
  });
});

describe('draw', () => {
  test('the same seed draws the same bolts', () => {
    const first = run('draw', demo, '--seed', '7', '--json');
    expect(first.status).toBe(0);
    expect(run('draw', demo, '--seed', '7', '--json').stdout).toBe(first.stdout);
    expect(run('draw', demo, '--seed', '8', '--json').stdout).not.toBe(first.stdout);
  });
  test('a size that is none is refused', () => {
    for (const size of ['0', 'x', '100000']) expect(run('draw', demo, '--seed', '7', '--size', size).status).toBe(2);
  });
});

describe('judge', () => {
  test('a lot, tools and gaps; a failed tool is 1', () => {
    const { status, stdout } = run('judge', join(demo, 'tests.yaml'));
    expect(status).toBe(1);
    expect(stdout).toMatch(/● lot HV24-611: K2/);
    expect(stdout).toMatch(/■ tool SK-B117: fail/);
    expect(stdout).toMatch(/flange PH-F1: .*go on/);
  });
  /** FHWA/AASHTO rotational-capacity test, 7/8 A325: 39 kip; torque at most 0.25·P·D, 1.15·39 kip left after the turn. */
  test('a rotational-capacity test passes, and fails where a nut stripped', () => {
    const of = (more: string) =>
      writeFileSync(
        join(folder, 'capacity.yaml'),
        `rotational-capacity:\n  - { lot: B1/N1/W1, minimum: 39 kip, diameter: 0.875 in, assemblies: [${Array.from({ length: 2 }, () => `{ torque: 560 lbf·ft, tension: 41 kip, tension-after-turn: 46 kip${more} }`).join(', ')}] }\n`,
      );
    of('');
    expect(run('judge', 'capacity.yaml')).toMatchObject({ status: 0, stdout: '● lots B1/N1/W1: rotational capacity shown\n' });
    of(', damaged: true');
    expect(run('judge', 'capacity.yaml').status).toBe(1);
  });
  test('a lot of two points, a negative torque and a line that is no YAML are named', () => {
    writeFileSync(
      join(folder, 'own.yaml'),
      'suitability:\n  - { lot: L, size: M24, grade: "10.9", system: HV, preload: 247 kN, clamped-thickness: 56 mm, assemblies: [{ torque: 700 N·m }, { torque: 710 N·m }] }\nshots:\n  - { tool: T, expected: 800 N·m, limit: 4 %, readings: [-3 N·m] }\n',
    );
    const { status, stdout } = run('judge', 'own.yaml');
    expect(status).toBe(1);
    expect(stdout).toContain('2 assemblies tested; 5 are wanted');
    expect(stdout).toContain('readings');
    writeFileSync(join(folder, 'broken.yaml'), 'shots: [\n');
    expect(run('judge', 'broken.yaml').status).toBe(1);
    expect(run('judge', 'nowhere.yaml').status).toBe(2);
  });
});

describe('inspect', () => {
  let drawn: readonly { readonly tag: string; readonly bolts: readonly number[] }[] = [];
  beforeAll(() => {
    drawn = JSON.parse(run('draw', demo, '--seed', '9', '--json').stdout).joints;
  });
  const write = (found: readonly string[], head = 'seed: 9\nwrench: SK-I009\n') =>
    writeFileSync(join(folder, 'inspection.yaml'), `${head}found:\n${found.map((line) => `  - ${line}\n`).join('')}`);
  const lines = (bad?: string) =>
    drawn.flatMap(({ tag, bolts }) => bolts.map((bolt) => `{ joint: ${tag}, bolt: ${bolt}, conforms: ${`${tag}/${bolt}` !== bad} }`));
  test('all conform: accepted; one does not: rejected; one is open: not finished', () => {
    write(lines());
    expect(run('inspect', demo, 'inspection.yaml')).toMatchObject({ status: 0 });
    const { tag, bolts } = drawn[0]!;
    write(lines(`${tag}/${bolts[0]}`));
    const rejected = run('inspect', demo, 'inspection.yaml');
    expect(rejected).toMatchObject({ status: 1 });
    expect(rejected.stdout).toContain(`not conforming: ${tag}/${bolts[0]}`);
    write(lines().slice(1));
    const open = run('inspect', demo, 'inspection.yaml');
    expect(open).toMatchObject({ status: 1 });
    expect(open.stdout).toContain('Not finished');
  }, 60_000);
  test('the same bolt twice, one that was not drawn, the tool that tightened: refused, all at once', () => {
    const [first] = lines();
    write([first!, first!, '{ joint: PH-F1, bolt: 1, conforms: true }'], 'seed: 9\nwrench: SK-B204\n');
    const { status, stderr } = run('inspect', demo, 'inspection.yaml');
    expect(status).toBe(2);
    expect(stderr.match(/→/g)!.length).toBeGreaterThanOrEqual(3);
  });
});
