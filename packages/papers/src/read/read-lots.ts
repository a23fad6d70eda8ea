import { type Lot, type Notice, notice } from '@clampwright/core';
import type { z } from 'zod';
import { type jobSchema, lotSchema } from './job-yaml.ts';
import { readFriction } from './read-friction.ts';
import { stated } from './stated.ts';
import { checkValue, type YamlValue } from './yaml-file.ts';

const FRICTION_KEY = { k: 'k', thread: 'thread-friction', bearing: 'bearing-friction' } as const;

/** The lots of job.yaml, one by one; a faulty one is left out and said. */
export function readLots({ value, at }: YamlValue<z.output<typeof jobSchema>>, notices: Notice[]): Lot[] {
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
      },
    ];
  });
}
