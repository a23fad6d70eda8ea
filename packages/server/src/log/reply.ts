import { type NoticeCode, notice, type Refused, refused } from '@clampwright/core';

/** HTTP status of a refusal, by its first notice; whatever is not here is a fault of the question. */
const STATUS: Partial<Record<NoticeCode, number>> = {
  'not-signed-in': 401,
  'sign-in-failed': 401,
  'passkey-not-known': 401,
  'not-allowed': 403,
  'from-another-site': 403,
  'head-not-signed': 403,
  'key-of-another-device': 403,
  'not-found': 404,
  'name-taken': 409,
  'last-planner': 409,
  'chain-has-a-gap': 409,
  'body-too-large': 413,
  'asked-too-often': 429,
  'server-defect': 500,
  'store-not-reachable': 503,
};
export const statusOf = ({ notices }: Refused): number => STATUS[notices[0]!.code] ?? 400;

export const notFound = refused(notice('not-found', {}));
