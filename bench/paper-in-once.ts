// One list read in a process of its own, so that its memory is its own: `node --import tsx bench/paper-in-once.ts FILE`.
import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { readJob } from '../packages/papers/src/read/index.ts';

const path = process.argv[2]!;
const text = (value: string) => new TextEncoder().encode(value);
const files = new Map([
  ['job.yaml', text(`title: b\nsite: b\nwork-date: 2026-11-25\njoints: ${basename(path)}\n`)],
  ['tools.yaml', text('tools: []\n')],
]);
const before = process.resourceUsage().maxRSS / 1024;
const start = performance.now();
const { job, notices } = readJob((name) => files.get(name) ?? new Uint8Array(readFileSync(path)));
console.log(
  JSON.stringify({
    ms: performance.now() - start,
    joints: job?.joints.length ?? 0,
    notices: notices.length,
    before,
    mebibytes: process.resourceUsage().maxRSS / 1024,
  }),
);
