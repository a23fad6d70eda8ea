import { levelOf } from '@clampwright/core';
import type { JudgedTest } from '@clampwright/papers';
import { say } from '@clampwright/words';
import { faultsText } from './plan-text.ts';

/** Does the test stop something? */
export const fails = ({ verdict }: JudgedTest): boolean => verdict.notices.some(({ code }) => levelOf(code) !== 'attention');

/** A test with its mark and everything that is said of it. */
export function judgedText(test: JudgedTest): string {
  const mark = fails(test) ? '■' : test.verdict.notices.length > 0 ? '▲' : '●';
  const said = test.verdict.notices.length > 0 ? `\n${faultsText(test.verdict.notices, 'metric')}` : '';
  return `${mark} ${lineOf(test)}${said}`;
}

const percent = (share: number) => `${(100 * share).toFixed(1)} %`;

/** A test in one line. */
export function lineOf(test: JudgedTest): string {
  switch (test.kind) {
    case 'suitability': {
      const { kClass, mean, variation, allows } = test.verdict;
      const opens = [allows.torqueMethod && 'torque method', allows.combinedMethod && 'combined method'].filter(Boolean).join(', ');
      return `lot ${test.of}: ${kClass}, k_m ${mean.toFixed(3)}, V_k ${variation.toFixed(3)}; opens ${opens || 'no method that needs friction'}`;
    }
    case 'verification': {
      const { passed, torque } = test.verdict;
      return `lot ${test.of}: ${passed ? 'verified' : 'not verified'}${torque === undefined ? '' : `, wrench at ${say({ dimension: 'torque', value: torque })}`}`;
    }
    case 'rotational-capacity':
      return `lots ${test.of}: rotational capacity ${test.verdict.passed ? 'shown' : 'not shown'}`;
    case 'shots': {
      const { verdict, mean, bias, interval } = test.verdict;
      const wide = interval ? `; 95 % of shots lie between ${shown(interval.low)} and ${shown(interval.high)}, with 95 % confidence` : '';
      return `tool ${test.of}: ${verdict}, mean ${shown(mean)}, off by ${percent(bias)}${wide}`;
    }
    case 'charges': {
      const { charges, least, confidence } = test.verdict;
      return `battery ${test.of}: the next charge does at least ${least} bolts, with ${100 * confidence} % confidence (${charges} charges seen)`;
    }
    case 'gaps': {
      const { spread, inside } = test.verdict;
      return `flange ${test.of}: gap differs by ${say({ dimension: 'length', value: spread })}, ${inside ? 'go on' : 'stop'}`;
    }
  }
}

const shown = (torque: number) => say({ dimension: 'torque', value: torque as never });
