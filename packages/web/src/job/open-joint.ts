import type { JointPlan } from '@clampwright/core';
import type { JointState } from './joint-state.ts';

/** A joint whose card is on the device. */
export type OpenJoint = JointState & { readonly card: JointPlan };
