import { execFileSync } from 'node:child_process';
import { X509Certificate } from 'node:crypto';
import { mkdtempSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { openAuthority } from './authority.ts';

const folder = mkdtempSync(join(tmpdir(), 'clampwright-authority-'));
afterAll(() => rmSync(folder, { recursive: true }));
const now = new Date();

// Held against OpenSSL, which reads what we wrote and follows the chain.
const judged = async (names: readonly string[], purpose: readonly string[] = []) => {
  const authority = await openAuthority(join(folder, 'ca'), 'Skerrow Sound', ['yard-box'], now);
  const { cert } = await authority.certify(names, now);
  writeFileSync(join(folder, 'leaf.pem'), cert);
  try {
    return execFileSync(
      'openssl',
      ['verify', '-x509_strict', '-CAfile', join(folder, 'ca/authority.pem'), ...purpose, join(folder, 'leaf.pem')],
      {
        stdio: 'pipe',
      },
    ).toString();
  } catch (error) {
    return String((error as { stderr: Buffer }).stderr);
  }
};

test('openAuthority() makes certificates that OpenSSL accepts for names and addresses of the yard', async () => {
  expect(
    await judged(
      ['yard-box', 'yard-box.local', '192.168.4.20', 'fd00::5'],
      ['-purpose', 'sslserver', '-verify_hostname', 'yard-box.local'],
    ),
  ).toContain(': OK');
  expect(await judged(['yard-box', '192.168.4.20'], ['-verify_ip', '192.168.4.20'])).toContain(': OK');
});

test('openAuthority() makes an authority that OpenSSL trusts for nothing public', async () => {
  expect(await judged(['yard-box', 'bank.example'])).toContain('permitted subtree violation');
  expect(await judged(['yard-box', '203.0.113.9'])).toContain('permitted subtree violation');
});

test.each([
  ['bank.example', false],
  ['pier.yard-box', true],
  ['10.255.0.1', true],
  ['172.32.0.1', false],
  ['203.0.113.9', false],
  ['fd12::9', true],
  ['2001:db8::1', false],
  ['anything.local', true],
])('refuses() and OpenSSL agree on %s: %s', async (name, fine) => {
  const authority = await openAuthority(join(folder, 'ca'), 'Skerrow Sound', ['yard-box'], now);
  expect(authority.refuses([name])).toEqual(fine ? [] : [name]);
  expect((await judged([name])).includes(': OK')).toBe(fine);
});

test('openAuthority() keeps its key for itself, and opens what it made', async () => {
  const first = await openAuthority(join(folder, 'ca'), 'Skerrow Sound', ['yard-box'], now);
  const again = await openAuthority(join(folder, 'ca'), 'another yard', [], now);
  expect(again.fingerprint).toBe(first.fingerprint);
  expect(again.fingerprint.replaceAll(' ', ':')).toBe(new X509Certificate(first.certificate).fingerprint256);
  expect(statSync(join(folder, 'ca/authority.key')).mode & 0o077).toBe(0);
});
