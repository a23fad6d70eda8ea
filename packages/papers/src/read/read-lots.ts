import { type Lot, type Notice, notice, type Place } from '@clampwright/core';
import type { z } from 'zod';
import type { HeadingMemory } from './heading-memory.ts';
import { type jobSchema, lotSchema } from './job-yaml.ts';
import type { OpenFile } from './open-file.ts';
import { readFriction } from './read-friction.ts';
import { readTests } from './read-tests.ts';
import { stated } from './stated.ts';
import { checkValue, type YamlValue } from './yaml-file.ts';

const FRICTION_KEY = { k: 'k', thread: 'thread-friction', bearing: 'bearing-friction' } as const;

/** The lots of job.yaml, one by one; a faulty one is left out and said. */
export function readLots(
  open: OpenFile,
  { value, at }: YamlValue<z.output<typeof jobSchema>>,
  memory: HeadingMemory,
  notices: Notice[],
): Lot[] {
  const seen = new Set<string>();
  return value.lots.flatMap((given, index): Lot[] => {
    const here = ['lots', index];
    const lot = checkValue(lotSchema, given, at, here);
    if (!lot.ok) {
      notices.push(...lot.notices);
      return [];
    }
    const { id, tested, failed } = lot.value;
    if (seen.has(id)) {
      notices.push(notice('lot-twice', { lot: id }, at(here)));
      return [];
    }
    seen.add(id);
    const read = readFriction(
      {
        k: lot.value.k,
        thread: lot.value['thread-friction'],
        bearing: lot.value['bearing-friction'],
        bearingDiameter: lot.value['bearing-diameter'],
        variation: lot.value.variation,
        source: lot.value.source,
        tested,
      },
      at(here),
      (figure) => at([...here, FRICTION_KEY[figure]]),
    );
    notices.push(...read.notices);
    const file = lot.value['suitability-test'];
    if (file !== undefined && read.friction) notices.push(notice('lot-friction-twice', { lot: id }, at(here)));
    const judged = file === undefined ? {} : testOf(open, id, file, at([...here, 'suitability-test']), memory, notices);
    return [
      {
        id,
        tested,
        failed,
        ...stated<Pick<Lot, 'kClass' | 'friction' | 'verifiedTorque' | 'lubricant'>>({
          kClass: lot.value['k-class'],
          friction: read.friction,
          verifiedTorque: lot.value['verified-torque'],
          lubricant: lot.value.lubricant,
        }),
        ...judged,
      },
    ];
  });
}

/** What the lot's own suitability test says of it; a failed one blocks its joints. */
function testOf(open: OpenFile, id: string, file: string, place: Place, memory: HeadingMemory, notices: Notice[]): Partial<Lot> {
  const { judged, notices: said } = readTests(open, file, memory);
  const test = judged.find((one) => one.kind === 'suitability' && one.of === id);
  if (test?.kind !== 'suitability') {
    notices.push(...(said.length > 0 ? said : [notice('lot-test-missing', { lot: id, file }, place)]));
    return { failed: true };
  }
  const { kClass, failed, friction, notices: found } = test.verdict;
  notices.push(...found.map((one) => ({ ...one, place })));
  return { tested: true, failed, kClass, ...(friction ? { friction } : {}) };
}
