import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { stepText } from './step-text.ts';

const whole = readFileSync(new URL('../../fixtures/ifc/splice-ifc4-mm.ifc', import.meta.url), 'utf8');
const look = (text: string) => stepText(new TextEncoder().encode(text));

test('a sound file passes, and what stands behind its end is left off', () => {
  const found = look(`${whole}#48,#52));\nENDSEC;\n`);
  expect('text' in found && found.text.length).toBe(whole.indexOf('END-ISO-10303-21;') + 'END-ISO-10303-21;'.length);
});

test.each([
  ['a text is never closed', whole.replace("'Skerrow Sound'", "'Skerrow Sound")],
  ['a comment is never closed', whole.replace('DATA;', 'DATA;\n/* note')],
  ['a bracket is never closed', whole.replace('(0.,0.,0.));', '(0.,0.,0.);')],
  ['a bracket closes that was not opened', whole.replace('(0.,0.,0.));', '(0.,0.,0.)));')],
  ['this is no “#number = NAME( … );”', whole.replace('#3=', '3=')],
  ['the file has no end: it was cut short', whole.slice(0, whole.indexOf('END-ISO'))],
  // found by fuzzing: the parser looked for this one for ever
  ['a number behind # is too long to be one of a statement', whole.replace('#1,', `#${'2'.repeat(400)},`)],
  ['brackets are nested too deeply', whole.replace('(0.,0.,0.)', '('.repeat(40))],
])('%s', (problem, text) => {
  const found = look(text);
  expect('problem' in found && found.problem).toBe(problem);
  expect('line' in found && found.line).toBeGreaterThan(6);
});
