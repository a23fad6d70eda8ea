import type { NoticeTexts } from '../notice-texts.ts';

export const serverTexts = {
  'not-signed-in': { says: 'You are not signed in, or this device is not enrolled.', remedy: 'Sign in, or enrol the device anew.' },
  'not-allowed': { says: 'Your role does not do this.', remedy: 'Ask the planner.' },
  'not-found': { says: 'There is nothing here for you.', remedy: 'Check the address; ask the planner whether you belong to the job.' },
  'sign-in-failed': { says: 'Name and password do not fit.', remedy: 'Type them again; the planner can make a new account.' },
  'passkey-not-taken': {
    says: 'The passkey was not taken: the answer came too late, or it does not belong to this address.',
    remedy: 'Start again. Open the address by which the others reach this server too; an address made of numbers cannot have passkeys.',
  },
  'passkey-not-known': {
    says: 'This passkey is not known here.',
    remedy: 'Sign in with name and password, then add a passkey in the settings.',
  },
  'code-not-valid': {
    says: 'The code is wrong, used up or too old.',
    remedy: 'Ask the planner for a new one: it holds for ten minutes and one device.',
  },
  'name-taken': { says: 'There is an account {name} already.', remedy: 'Take another name.' },
  'last-planner': { says: 'This is the last account of a planner.', remedy: 'Make another planner first.' },
  'question-malformed': {
    says: 'The field “{field}” is missing or not as described.',
    remedy: 'Ask as /api/v1/openapi.json describes it.',
  },
  'body-not-json': { says: 'The body is not JSON in UTF-8.', remedy: 'Ask as /api/v1/openapi.json describes it.' },
  'body-too-large': { says: 'The body is larger than {limit} bytes.', remedy: 'Send it in smaller pieces.' },
  'body-cut-short': { says: 'The body ended early.', remedy: 'Send it again.' },
  'hash-of-other-bytes': { says: 'The bytes do not have the hash {hash}.', remedy: 'Send the file again; nothing was kept of it.' },
  'asked-too-often': { says: 'Asked too often.', remedy: 'Wait {seconds} s.' },
  'from-another-site': { says: 'The question came from a page of another site.', remedy: 'Open the address of this server itself.' },
  'store-not-reachable': {
    says: 'The books cannot be written or read right now.',
    remedy: 'Nothing is lost: devices keep what was not acknowledged. Look at the disk or the database; try again.',
  },
  'server-defect': { says: 'The server failed at request {request}.', remedy: 'Report it with that number; nothing was acknowledged.' },
  'report-too-long': {
    says: 'The log has {size} entries; up to {most} a report is made here.',
    remedy: 'Make it beside the server: clampwright report JOB FILE.pdf.',
  },
  'log-smaller-than-asked': { says: 'The log has {size} entries.', remedy: 'Ask within that.' },
} satisfies NoticeTexts<'server'>;
