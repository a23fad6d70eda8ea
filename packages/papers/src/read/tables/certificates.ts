import type { Field } from '../field.ts';

/** A row for each certificate; a tool may have several, and its chart belongs to one of them. */
export const CERTIFICATE_FIELDS = {
  tool: { says: 'serial number' },
  number: { says: 'certificate number' },
  calibrated: { says: 'date of calibration' },
  due: { says: 'due date' },
  uncertainty: { says: 'uncertainty', dimension: 'share' },
  chart: { says: 'chart file' },
  jointRate: { says: 'joint rate' },
  photo: { says: 'photo of the certificate' },
} as const satisfies Readonly<Record<string, Field>>;
