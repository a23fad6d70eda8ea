import { readdirSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import type { Plugin } from 'vite';

const NAME = 'virtual:demo-folder';
const DEMO = join(import.meta.dirname, '../../../demo');

/** The job folder of the demo yard, by file name in base64: what the planner's demo is opened from. */
export const demoFolder = (): Plugin => ({
  name: 'demo-folder',
  resolveId: (id) => (id === NAME ? `\0${NAME}` : undefined),
  load(id) {
    if (id !== `\0${NAME}`) return undefined;
    const names = readdirSync(DEMO, { recursive: true, withFileTypes: true })
      .filter((one) => one.isFile())
      .map(({ parentPath, name }) => join(parentPath, name).slice(DEMO.length + 1))
      // a plan that somebody wrote there is not the demo
      .filter((name) => !name.startsWith(`plan${sep}`));
    const files = Object.fromEntries(names.map((name) => [name.split(sep).join('/'), readFileSync(join(DEMO, name)).toString('base64')]));
    return `export default ${JSON.stringify(files)};`;
  },
});
