// Brings a fresh checkout to where it can run: dependencies as locked, nothing else. Asks nothing.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';

const STAMP = 'node_modules/.clampwright-lock';

/** Runs a command with its output shown; ends the process with its exit code when it fails. */
export function run(command, args, options = {}) {
  const { status, error } = spawnSync(command, args, { stdio: 'inherit', ...options });
  if (error || status !== 0) {
    console.error(`failed: ${command} ${args.join(' ')}${error ? ` (${error.message})` : ''}`);
    process.exit(status || 1);
  }
}

/** Installs the locked dependencies when they are missing or the lock has changed since. */
export function install() {
  const [major] = process.versions.node.split('.').map(Number);
  if (major < 20) {
    console.error(`Clampwright needs Node 20 or later; this is ${process.version}.`);
    process.exit(1);
  }
  const lock = createHash('sha256').update(readFileSync('package-lock.json')).digest('hex');
  if (existsSync(STAMP) && readFileSync(STAMP, 'utf8') === lock) return;
  console.log('Installing dependencies as locked …');
  run('npm', ['ci', '--no-audit', '--no-fund']);
  writeFileSync(STAMP, lock);
}

/** Debian packages that only tests and pictures need; installed where we are root on Debian, else said. */
export function debianPackages(needed) {
  const missing = needed.filter(({ file }) => !existsSync(file)).map(({ name }) => name);
  if (missing.length === 0) return true;
  const canInstall = process.getuid?.() === 0 && existsSync('/usr/bin/apt-get');
  if (!canInstall) {
    console.log(`Left out: what needs ${missing.join(', ')} (not installed, and this is not root on Debian).`);
    return false;
  }
  console.log(`Installing ${missing.join(', ')} …`);
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  run('apt-get', ['update', '-qq'], { env, stdio: ['ignore', 'ignore', 'inherit'] });
  run('apt-get', ['install', '-y', '-qq', '--no-install-recommends', ...missing], { env, stdio: ['ignore', 'ignore', 'inherit'] });
  return true;
}

export const BROWSER = [
  { name: 'chromium', file: '/usr/bin/chromium' },
  { name: 'fonts-dejavu-core', file: '/usr/share/fonts/truetype/dejavu/DejaVuSans.ttf' },
  { name: 'poppler-utils', file: '/usr/bin/pdftotext' },
];

/** Readers of what goes out, none of them ours. */
export const PAPERS = [
  { name: 'poppler-utils', file: '/usr/bin/pdftotext' },
  { name: 'qpdf', file: '/usr/bin/qpdf' },
  { name: 'libreoffice-calc', file: '/usr/bin/soffice' },
];
