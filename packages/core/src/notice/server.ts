import { fault } from './level.ts';

/** Why a server does not answer what it was asked. */
export const serverNotices = {
  'not-signed-in': fault(),
  'not-allowed': fault(),
  'not-found': fault(),
  'sign-in-failed': fault(),
  'passkey-not-taken': fault(),
  'passkey-not-known': fault(),
  'code-not-valid': fault(),
  'name-taken': fault<{ name: string }>(),
  'last-planner': fault(),
  'question-malformed': fault<{ field: string }>(),
  'body-not-json': fault(),
  'body-too-large': fault<{ limit: number }>(),
  'body-cut-short': fault(),
  'hash-of-other-bytes': fault<{ hash: string }>(),
  'asked-too-often': fault<{ seconds: number }>(),
  'from-another-site': fault(),
  'store-not-reachable': fault(),
  'server-defect': fault<{ request: string }>(),
  'report-too-long': fault<{ size: number; most: number }>(),
  'log-smaller-than-asked': fault<{ size: number }>(),
} as const;
