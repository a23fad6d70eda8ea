import { GASKET_KINDS } from '@clampwright/core';
import { z } from 'zod';
import { insidePath, quantity, word } from './yaml-values.ts';

const gasket = z.strictObject({
  kind: z.enum(GASKET_KINDS),
  thickness: quantity('length').optional(),
  modulus: quantity('modulus').optional(),
  'unloading-modulus': quantity('modulus').optional(),
  inner: quantity('length').optional(),
  outer: quantity('length').optional(),
  'least-stress': quantity('stress').optional(),
  'greatest-stress': quantity('stress').optional(),
});
const land = z.strictObject({ inner: quantity('length'), outer: quantity('length'), height: quantity('length') });

const ring = z.strictObject({
  inner: quantity('length'),
  outer: quantity('length'),
  thickness: quantity('length'),
  wall: quantity('length'),
  'wall-side': z.enum(['inside', 'outside']),
  'hub-outer': quantity('length').optional(),
  'hub-length': quantity('length').optional(),
  land: land.optional(),
});
const plates = z.strictObject({
  width: quantity('length'),
  height: quantity('length'),
  thickness: quantity('length'),
  support: z.enum(['mirrored', 'ground']),
  'bed-thickness': quantity('length'),
  'bed-modulus': quantity('modulus'),
});

/** What the joints of one entry clamp: a standard flange with its gasket, a ring, plates, or a measured matrix; exactly one of them. */
export const membersSchema = z
  .strictObject({
    joints: z.array(word).min(1),
    gasket: gasket.optional(),
    ring: ring.optional(),
    plates: plates.optional(),
    matrix: insidePath.optional(),
    'matrix-source': word.optional(),
    evenness: quantity('share').optional(),
    'greatest-bolt-force': quantity('force').optional(),
  })
  .refine((entry) => [entry.ring, entry.plates, entry.matrix].filter((one) => one !== undefined).length <= 1, {
    message: 'one of ring, plates and matrix',
  })
  .refine((entry) => entry.gasket ?? entry.ring ?? entry.plates ?? entry.matrix, { message: 'gasket, ring, plates or matrix' });

/** members.yaml: a list of entries. */
export const membersFileSchema = z.strictObject({ members: z.array(z.unknown()).default([]) });
