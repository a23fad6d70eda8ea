import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { planJob } from '@clampwright/core';
import { issuedValves, readJob } from '@clampwright/papers';
import type { Plugin } from 'vite';

const NAME = 'virtual:practice-job';
const DEMO = join(import.meta.dirname, '../../../demo');

/** The demo yard's job, its plan and its valves, made when the app is built: what practice works on. */
export const practiceJob = (): Plugin => ({
  name: 'practice-job',
  resolveId: (id) => (id === NAME ? `\0${NAME}` : undefined),
  load(id) {
    if (id !== `\0${NAME}`) return undefined;
    const open = (path: string) => (existsSync(join(DEMO, path)) ? new Uint8Array(readFileSync(join(DEMO, path))) : 'missing');
    const read = readJob(open);
    if (!read.job) throw new Error(`the demo cannot be read: ${read.notices.map(({ code }) => code).join(', ')}`);
    const { valves } = issuedValves(open, read.job.tools);
    return `export default ${JSON.stringify({ job: read.job, plan: planJob(read.job), valves })};`;
  },
});
