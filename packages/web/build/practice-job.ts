import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { planJob } from '@clampwright/core';
import { readJob } from '@clampwright/papers';
import type { Plugin } from 'vite';

const NAME = 'virtual:practice-plan';
const DEMO = join(import.meta.dirname, '../../../demo');

/** The plan of the demo yard, made when the app is built: what practice works on. */
export const practiceJob = (): Plugin => ({
  name: 'practice-job',
  resolveId: (id) => (id === NAME ? `\0${NAME}` : undefined),
  load(id) {
    if (id !== `\0${NAME}`) return undefined;
    const read = readJob((path) => (existsSync(join(DEMO, path)) ? new Uint8Array(readFileSync(join(DEMO, path))) : 'missing'));
    if (!read.job) throw new Error(`the demo cannot be read: ${read.notices.map(({ code }) => code).join(', ')}`);
    return `export default ${JSON.stringify(planJob(read.job))};`;
  },
});
