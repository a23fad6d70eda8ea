import { writeFileSync, readFileSync, writeSync } from 'node:fs';
import { mutated } from './mutate.ts';
import { randomBy } from './random.ts';
const from = Number(process.argv[2]), to = Number(process.argv[3]);
const models = ['splice-ifc4-mm', 'flange-ifc2x3-inch', 'asked-ifc4x3-m'].map((n) => new Uint8Array(readFileSync(`packages/papers/fixtures/ifc/${n}.ifc`)));
const NUMBERS = ['0','-1','1e999','1,234','1.234.567','99999999999999999999','NaN','١٢','\u0000','\u202e','"','=1+1','\r\n','ÿ'];
const words = [...NUMBERS,'#1','#999999','$','*','()','((((',"'",'\\X2\\00FC\\X0\\','.MILLI.','.BOLT.','IFCLOCALPLACEMENT(','IFCREAL(1.)','/*',';','ENDSEC;','END-ISO-10303-21;'];
const { readModel } = await import('../packages/papers/src/ifc/index.ts');
await readModel(models[0]!, 'a.ifc');
for (let s = from; s < to; s++) {
  const random = randomBy(s);
  const m = mutated(random.one(models), words, random);
  writeFileSync('/tmp/zz-last.ifc', m); writeSync(1, `${s}\n`);
  await readModel(m, 'a.ifc');
}
console.log('fine');
