import type { Tool, TypedCertificate } from '@clampwright/core';

/** What was typed of a certificate, as it is judged; what the paper does not say is empty. */
export const typedCertificate = ({ chart: { certificate } }: Tool, typedBy: string, checkedBy?: string): TypedCertificate => ({
  number: certificate.number,
  serial: certificate.serial,
  laboratory: certificate.laboratory ?? '',
  calibrated: certificate.calibrated,
  due: certificate.due,
  uncertainty: certificate.uncertainty,
  reference: certificate.reference ?? '',
  direction: certificate.direction ?? 'tightening',
  adapter: certificate.adapter ?? '',
  typedBy,
  ...(checkedBy === undefined ? {} : { checkedBy }),
});
