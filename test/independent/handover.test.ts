import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { bytesSource, verifyHandover } from '../../packages/record/src/index.ts';

const folder = mkdtempSync(join(tmpdir(), 'clampwright-elsewhere-'));
afterAll(() => rmSync(folder, { recursive: true }));
const [file, seen] = [join(folder, 'job.handover'), join(folder, 'checkpoint')];
const python = spawnSync('python3', ['test/independent/build_handover.py', file, seen], { encoding: 'utf8' });
if (python.error) console.log(`left out: the handover file written in Python (${python.error.message})`);

describe.skipIf(python.error)('a handover file written by another program in another language, from the description alone', () => {
  test('was written', () => expect({ status: python.status, stderr: python.stderr }).toEqual({ status: 0, stderr: '' }));
  test('verifies', async () => {
    const result = await verifyHandover(bytesSource(readFileSync(file)), { seen: readFileSync(seen, 'utf8') });
    expect(result).toMatchObject({
      ok: true,
      value: {
        title: 'Built elsewhere',
        size: 45,
        seen: 17,
        attachments: 1,
        report: true,
        devices: [{ entries: 45, unsigned: 0, forked: false }],
      },
    });
  });
  test('does not verify with any one bit of it turned', async () => {
    const bytes = new Uint8Array(readFileSync(file));
    for (let at = 0; at < bytes.length; at += 23) {
      const changed = bytes.slice();
      changed[at]! ^= 1 << (at % 8);
      const result = await verifyHandover(bytesSource(changed));
      expect({ at, ok: result.ok }).toEqual({ at, ok: false });
    }
  });
});
