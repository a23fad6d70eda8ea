import { z } from 'zod';
import { between, date, insidePath, label, quantity, word, zone } from './yaml-values.ts';

/** One lot. Lots and tools are checked one by one, so that a faulty one does not keep the others out. */
export const lotSchema = z.strictObject({
  id: label,
  'k-class': z.enum(['K0', 'K1', 'K2']).optional(),
  k: quantity('number').optional(),
  'thread-friction': quantity('number').optional(),
  'bearing-friction': quantity('number').optional(),
  'bearing-diameter': quantity('length').optional(),
  variation: quantity('share').optional(),
  source: word.optional(),
  tested: z.boolean().default(false),
  failed: z.boolean().default(false),
  'tested-turning': z.enum(['nut', 'head']).optional(),
  'verified-torque': quantity('torque').optional(),
  /** file with the measured series of this lot's suitability test */
  'suitability-test': insidePath.optional(),
  lubricant: word.optional(),
});

const person = z.strictObject({ name: label, role: label, qualification: label.optional(), 'qualified-until': date.optional() });

/** job.yaml: site, date, units, conditions, people, lots. */
export const jobSchema = z.strictObject({
  title: label,
  site: word,
  'work-date': date,
  units: z.enum(['metric', 'US']).default('metric'),
  'rule-set': word.optional(),
  conditions: z
    .strictObject({ wet: z.boolean().default(false), 'at-height': z.boolean().default(false), zone: zone.optional() })
    .default({ wet: false, 'at-height': false }),
  joints: insidePath.default('joints.csv'),
  tools: insidePath.default('tools.yaml'),
  members: insidePath.default('members.yaml'),
  'execution-class': z.enum(['EXC1', 'EXC2', 'EXC3', 'EXC4']).optional(),
  crews: between(1, 99, true).default(1),
  'shift-hours': between(1, 24).default(8),
  people: z.array(person).default([]),
  lots: z.array(z.unknown()).default([]),
});

const socket = z.strictObject({ 'across-flats': quantity('length'), 'outer-diameter': quantity('length') });
const certificate = z.strictObject({
  number: label,
  serial: label,
  calibrated: date,
  due: date,
  uncertainty: quantity('share'),
  'joint-rate': z.enum(['hard', 'soft']).optional(),
  laboratory: word.optional(),
  /** standard that the laboratory measured against */
  reference: word.optional(),
  /** accessories between tool and transducer */
  adapter: word.optional(),
  direction: z.enum(['tightening', 'loosening', 'both']).optional(),
  /** picture or scan of it, in the job folder */
  photo: insidePath.optional(),
});

/** One tool with its certificate, arm, sockets and the name of its chart file. */
export const toolSchema = z.strictObject({
  serial: label,
  name: label,
  kind: z.enum(['battery', 'electric', 'pneumatic', 'hydraulic', 'torque multiplier', 'click wrench']),
  arm: quantity('length').optional(),
  'arm-rating': quantity('torque').optional(),
  repeatability: quantity('share'),
  interpolation: z.boolean().default(false),
  /** chart of `certificate`; those of `certificates`, and of the list of certificates, are named there */
  chart: insidePath.optional(),
  /** battery current per 100 N·m at the stall, and the voltage at which the tool cuts off: from the bench */
  peak: z.strictObject({ 'amperes-per-100-N·m': between(0.1, 500), 'cut-off-volts': between(1, 120) }).optional(),
  certificate: certificate.optional(),
  /** earlier and later ones, each with its own chart */
  certificates: z.array(z.strictObject({ ...certificate.shape, chart: insidePath })).default([]),
  sockets: z.array(socket).default([]),
});

/** One battery as its label and gauge say. */
export const batterySchema = z.strictObject({
  serial: label,
  volts: between(1, 120),
  'ampere-hours': between(0.1, 60),
  health: quantity('share').default(1),
  temperature: between(-60, 100).default(20),
  lit: between(0, 4, true).default(4),
  'never-charged': z.boolean().default(false),
  cells: z.strictObject({ series: between(1, 40, true), parallel: between(1, 20, true), milliohms: between(1, 500) }).optional(),
});

/** tools.yaml: a list of tools; batteries and their charger. */
export const toolsSchema = z.strictObject({
  tools: z.array(z.unknown()).default([]),
  /** file with a row for each certificate */
  certificates: insidePath.optional(),
  batteries: z.array(z.unknown()).default([]),
  charger: z
    .strictObject({ watts: between(1, 5000), 'vehicle-fuse': between(1, 100).optional(), 'taper-minutes': between(0, 240).default(15) })
    .optional(),
});
