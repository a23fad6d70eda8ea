import type { JointPlan, PlannedJob } from '@clampwright/core';
import { hashOf, utf8 } from '@clampwright/record';

// What codes hold is opaque and names no host: somebody who scans one with any reader learns a number, no address and no name.

/** Of a card: the hash under which the log keeps it, so that a device finds exactly this issue. Upper case: half the modules. */
export const cardCode = (joint: JointPlan): string => `CLAMPWRIGHT:CARD:${cardHash(joint).toUpperCase()}`;

const cardHash = (joint: JointPlan) => hashOf(utf8(JSON.stringify(joint)));

/** What is read over the radio: the beginning of the card’s hash. */
export const shortCode = (joint: JointPlan): string =>
  cardHash(joint)
    .slice(0, 8)
    .toUpperCase()
    .replace(/(....)/, '$1-');

/** Of a joint's tag: the same for every issue of the plan, for it stays on the steel. */
export const jointCode = ({ title, site }: Pick<PlannedJob, 'title' | 'site'>, { tag }: Pick<JointPlan, 'tag'>): string =>
  `CLAMPWRIGHT:JOINT:${hashOf(utf8(`clampwright-joint-1\n${title}\n${site}\n${tag}`))
    .slice(0, 32)
    .toUpperCase()}`;
