import { readFileSync } from 'node:fs';
import { readModel } from '../packages/papers/src/ifc/index.ts';
const t=Date.now();
const r = await readModel(new Uint8Array(readFileSync(process.argv[2]!)), 'a.ifc');
console.log(Date.now()-t, r.ok, r.ok ? r.value.notices.length : r.notices.map(n=>n.code+JSON.stringify(n.params)), process.resourceUsage().maxRSS/1024);
