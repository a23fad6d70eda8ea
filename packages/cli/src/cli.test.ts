import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { appendFileSync, cpSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';

const ROOT = join(import.meta.dirname, '../../..');
const ROWS = join(ROOT, 'packages/reference/rows');
const folder = mkdtempSync(join(tmpdir(), 'clampwright-cli-'));
afterAll(() => rmSync(folder, { recursive: true }));

function run(...args: string[]) {
  const { status, stdout, stderr } = spawnSync('node', [join(ROOT, 'packages/cli/dist/clampwright.mjs'), ...args], {
    encoding: 'utf8',
    cwd: folder,
  });
  return { status, stdout, stderr, last: stdout.trimEnd().split('\n').at(-1) };
}

describe('check', () => {
  test('ends with the counts, 0 where nothing disagrees', () => {
    const { status, last } = run('check', join(ROWS, 'en-metric.checks.jsonl'));
    expect(last).toMatch(/^agreed \d+, disagreed 0, disputed \d+, not evaluated \d+$/);
    expect(status).toBe(0);
  });
  test('a row that differs is shown with both numbers, and is 1', () => {
    const row = readFileSync(join(ROWS, 'en-metric.checks.jsonl'), 'utf8')
      .split('\n')
      .map((line) => JSON.parse(line || 'null'))
      .find((one) => one?.quantity === 'As' || one?.topic === 'geometry');
    writeFileSync(join(folder, 'own.jsonl'), `${JSON.stringify({ ...row, id: 'own-1', expected: row.expected * 1.5 })}\nno json\n`);
    const { status, stdout, stderr, last } = run('check', 'own.jsonl');
    expect(stdout).toContain('disagreed own-1');
    expect(stdout).toContain(String(row.expected * 1.5));
    expect(stderr).toContain('own.jsonl, line 2: not a line of JSON');
    expect(last).toBe('agreed 0, disagreed 1, disputed 0, not evaluated 0');
    expect(status).toBe(1);
  });
  test('joints with finite-element truth end with their own line', () => {
    const { status, stdout, last } = run('check', join(ROWS, 'interaction/base8_m30_square.json'));
    expect(stdout).toContain('base8_m30_square');
    expect(last).toMatch(/^cases 1, given matrix worst \d\.\d+ %, from dimensions worst \d\.\d\d % median \d\.\d\d %$/);
    expect(status).toBe(0);
  });
  test('a file that is not there is 2, and a joint without its data 1', () => {
    expect(run('check', 'nowhere.jsonl')).toMatchObject({ status: 2, stderr: 'There is no file nowhere.jsonl.\n' });
    writeFileSync(join(folder, 'broken.json'), '{"geometry":{},"flexibility":{},"sequences":[],"bolts":{}}');
    const { status, stderr } = run('check', 'broken.json');
    expect(stderr).toContain('missing or malformed');
    expect(status).toBe(1);
  });
});

describe('init and plan', () => {
  let made: ReturnType<typeof run>;
  beforeAll(() => {
    made = run('init', 'pier');
  });
  test('init writes an example that plans, and never writes twice', () => {
    expect(made.status).toBe(0);
    const before = readFileSync(join(folder, 'pier/joints.csv'), 'utf8');
    expect(run('init', 'pier')).toMatchObject({ status: 2 });
    expect(readFileSync(join(folder, 'pier/joints.csv'), 'utf8')).toBe(before);
    const { status, stdout } = run('plan', 'pier');
    expect([0, 1]).toContain(status);
    expect(stdout).toContain('ready');
    expect(readdirSync(join(folder, 'pier/plan')).sort()).toEqual(['cards.html', 'plan.json']);
  });
  test('the same job is the same bytes', () => {
    const bytes = () => readFileSync(join(folder, 'pier/plan/plan.json'), 'utf8');
    const before = bytes();
    run('plan', 'pier');
    expect(bytes()).toBe(before);
  });
  test('--json is JSON and nothing else', () => {
    const { stdout } = run('plan', 'pier', '--json', '--out', 'elsewhere');
    expect(JSON.parse(stdout).plan.format).toBe('clampwright-plan');
  });
  test('a file that is not ours is left as it is', () => {
    cpSync(join(folder, 'pier'), join(folder, 'other'), { recursive: true });
    writeFileSync(join(folder, 'other/plan/plan.json'), 'my notes');
    const { status, stderr } = run('plan', 'other');
    expect(status).toBe(2);
    expect(stderr).toContain('plan.json');
    expect(readFileSync(join(folder, 'other/plan/plan.json'), 'utf8')).toBe('my notes');
  });
  test('a chart outside the folder is not followed, by path or by link', () => {
    const text = (name: string) => join(folder, 'outside', name);
    cpSync(join(folder, 'pier'), join(folder, 'outside'), { recursive: true });
    writeFileSync(join(folder, 'secret.csv'), 'secret,words\n1,2\n');
    const tools = readFileSync(text('tools.yaml'), 'utf8');
    const chart = /chart: *(\S+\.csv)/.exec(tools)![1]!;
    writeFileSync(text('tools.yaml'), tools.replace(chart, '../secret.csv'));
    const outside = run('plan', 'outside');
    expect(outside.stdout + outside.stderr).not.toContain('secret,words');
    expect(outside.status).not.toBe(0);
    writeFileSync(text('tools.yaml'), tools);
    rmSync(text(chart));
    symlinkSync(join(folder, 'secret.csv'), text(chart));
    const linked = run('plan', 'outside');
    expect(linked.stdout + linked.stderr).not.toMatch(/secret,words|"secret"/);
    expect(linked.status).not.toBe(0);
  });
  test('a faulty row is named with its place, is 1, and the good ones are planned', () => {
    appendFileSync(join(folder, 'pier/joints.csv'), 'X-1,broken row\n');
    const { status, stdout, stderr } = run('plan', 'pier');
    expect(status).toBe(1);
    expect(stdout + stderr).toMatch(/joints\.csv.*row \d+/s);
    expect(stdout).toMatch(/\d+ joint/);
  });
  test('no job there is 2', () => {
    expect(run('plan', 'nothing-here').status).toBe(2);
    expect(run('plan').status).toBe(2);
    expect(run('--help').status).toBe(0);
  });
});

describe('simulate', () => {
  const demo = join(ROOT, 'demo');
  test('the same seed gives the same bytes on one core and on two', () => {
    const files = ['1', '2'].map((workers) => {
      const out = join(folder, `played-${workers}`);
      expect(run('simulate', demo, '--runs', '120', '--seed', '7', '--workers', workers, '--out', out).status).toBe(0);
      return readFileSync(join(out, 'simulation.json'), 'utf8');
    });
    expect(files[1]).toBe(files[0]);
    const { runs, joints, notSimulated } = JSON.parse(files[0]!);
    expect(runs).toBe(120);
    expect(joints.length + notSimulated.length).toBe(9);
  });
  test('everything that cannot be played is named at once, and nothing is written', () => {
    const out = join(folder, 'unplayed');
    const { status, stderr } = run(
      'simulate',
      demo,
      '--runs',
      '0',
      '--seed',
      'x',
      '--rate',
      'sneezed=1',
      'missed=2',
      '--workers',
      '0',
      '--out',
      out,
    );
    expect(status).toBe(2);
    for (const word of ['“0”', '“NaN”', '“sneezed”', 'missed', '--workers']) expect(stderr).toContain(word);
    expect(existsSync(out)).toBe(false);
  });
  test('Ctrl-C keeps the runs that are finished', async () => {
    const out = join(folder, 'stopped');
    const bundle = join(ROOT, 'packages/cli/dist/clampwright.mjs');
    const child = spawn('node', [bundle, 'simulate', demo, '--runs', '9000000', '--workers', '1', '--out', out], { cwd: folder });
    await once(child.stderr, 'data');
    await new Promise((resolve) => setTimeout(resolve, 1500));
    child.kill('SIGINT');
    const [code] = await once(child, 'exit');
    expect(code).toBe(1);
    const { runs, asked, joints } = JSON.parse(readFileSync(join(out, 'simulation.json'), 'utf8'));
    expect(runs).toBeGreaterThan(0);
    expect(runs).toBeLessThan(asked.runs);
    expect(joints[0].lowest.counts.reduce((sum: number, one: number) => sum + one, 0)).toBe(runs);
  });
});
