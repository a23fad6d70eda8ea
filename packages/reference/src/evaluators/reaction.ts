import { boltBending, degrees, inNewtonMetre, mm, Nm, reactionForce, rootDiameter, skewContact, tiltingMoment } from '@clampwright/core';
import { num } from '../inputs.ts';
import type { Evaluators, Inputs } from '../row.ts';

const force = (inputs: Inputs) => reactionForce(Nm(num(inputs, 'torque_Nm')), mm(1000 * num(inputs, 'arm_length_m')));
const skew = (inputs: Inputs) => skewContact(force(inputs), degrees(num(inputs, 'contact_normal_off_perpendicular_deg')));
const tilt = (inputs: Inputs) => tiltingMoment(force(inputs), mm(1000 * num(inputs, 'axial_offset_m')));

export const reactions: Evaluators = {
  reaction_force: force,
  contact_normal_force_when_contact_not_square: (inputs) => skew(inputs).normal,
  thrust_along_arm_when_contact_not_square: (inputs) => skew(inputs).thrust,
  tilting_moment_from_out_of_plane_reaction: (inputs) => inNewtonMetre(tilt(inputs)),
  bolt_bending_stress_if_all_tilt_goes_to_bolt: (inputs) =>
    boltBending(tilt(inputs), rootDiameter(mm(num(inputs, 'd_mm')), mm(num(inputs, 'P_mm')))),
};
