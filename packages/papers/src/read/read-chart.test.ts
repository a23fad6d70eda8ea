import { expect, test } from 'vitest';
import { headingMemory } from './heading-memory.ts';
import { readChart } from './read-chart.ts';

const read = (text: string) =>
  readChart(
    new TextEncoder().encode(text),
    'chart.csv',
    headingMemory(() => 'missing'),
  );
const settings = (text: string) => {
  const { settings: found, scales, notices } = read(text);
  expect(notices).toEqual([]);
  expect(scales.map(({ name }) => name)).toEqual(['gear', 'step']);
  return found.map(({ labels, torque }) => `${labels.join('/')}=${torque / 1000}`).sort();
};
const SAME = ['1/1=100', '1/2=110', '2/1=200', '2/2=220'];

test.each([
  ['gears down, steps across', 'gear [N·m],1,2\n1,100,110\n2,200,220\n'],
  ['gears down, steps by name', 'gear [N·m],step 1,step 2\ngear 1,100,110\ngear 2,200,220\n'],
  ['steps down, gears by name', 'step [N·m],gear 1,gear 2\n1,100,200\n2,110,220\n'],
  ['steps down, gears as figures', 'step [N·m],1,2\nstep 1,100,200\nstep 2,110,220\n'],
  ['in German, the other way round', 'Stufe [N·m];Gang 1;Gang 2\nStufe 1;100;200\nStufe 2;110;220\n'],
])('a table with %s gives the same settings', (_, text) => {
  expect(settings(text)).toEqual(SAME);
});

test('a table whose headings are half gears and half steps is not guessed', () => {
  expect(read('gear [N·m],gear 1,step 2\n1,100,110\n').settings).toEqual([]);
});

test.each([
  ['across', 'Pressure [bar],100,150,200\nTorque [N·m],310,480,655\nStandard deviation [%],2,2,3\n'],
  ['down', 'Pressure [bar],Torque [N·m],Standard deviation [%]\n100,310,2\n150,480,2\n200,655,3\n'],
  ['across, in German', 'Pumpendruck [bar];100;150;200\nDrehmoment [N·m];310;480;655\nStandardabweichung [%];2;2;3\n'],
])('a pressure table that runs %s', (_, text) => {
  const { scales, settings: found, notices } = read(text);
  expect(notices).toEqual([]);
  expect(scales).toEqual([{ name: 'pump pressure', unit: 'bar' }]);
  expect(found.map(({ labels, torque, deviation }) => [labels[0], torque / 1000, deviation])).toEqual([
    ['100', 310, 0.02],
    ['150', 480, 0.02],
    ['200', 655, 0.03],
  ]);
});

test('a fault in a table that runs across is where it stands: its own row and column', () => {
  const { settings: found, notices } = read('Pressure [bar],100,150,200\nTorque [N·m],310,abc,655\n');
  expect(found.map(({ labels }) => labels)).toEqual([['100'], ['200']]);
  expect(notices.map(({ code, place }) => [code, place?.row, place?.letter, place?.read])).toEqual([['quantity-wanted', 2, 'C', 'abc']]);
});
