import { notice } from '@clampwright/core';
import type { Told } from '../entry/kind.ts';
import type { Found } from './found.ts';
import { find } from './found.ts';
import type { JointDraft } from './joint-draft.ts';
import type { Look } from './look.ts';

/** Was whoever did it known, qualified and still on the job that day, and was the device? */
export function judgePerson(found: Found[], told: Told, look: Look): void {
  const { by, device } = told.entry;
  const state = look.device(device, told);
  if (state === 'unknown') find(found, told, notice('device-not-enrolled', { device }));
  if (state === 'revoked') find(found, told, notice('device-was-revoked', { device }));
  if (by === undefined) {
    find(found, told, notice('person-not-named', {}));
    return;
  }
  const enrolled = look.enrolled(by, told);
  if (!enrolled) {
    find(found, told, notice('person-not-known', { person: by }));
    return;
  }
  if (look.revoked(by, told)) find(found, told, notice('person-was-revoked', { person: by }));
  const until = enrolled.body.qualifiedUntil;
  if (until !== undefined && until < told.on) find(found, told, notice('person-not-qualified', { person: by, until }));
}

/** Was the tool known, within its calibration, and checked that day? */
export function judgeTool(found: Found[], told: Told, tool: string, look: Look): void {
  const [due, check] = [look.due(tool, told), look.check(tool, told)];
  if (due === undefined) find(found, told, notice('tool-not-known', { tool }));
  else if (due < told.on) find(found, told, notice('tool-expired', { tool, due }));
  if (check?.on !== told.on) find(found, told, notice('tool-not-checked', { tool, date: told.on }));
  else if (!check.body.passed) find(found, told, notice('tool-check-failed', { tool, date: told.on }));
}

/** Is there a plan for the joint, in force, and did the card in hand come from it? */
export function judgePlan(joint: JointDraft, told: Told, card: string | undefined, look: Look): void {
  const { plan, found } = joint;
  if (!plan) {
    find(found, told, notice('plan-not-issued', {}));
    return;
  }
  if (look.withdrawn(plan.number, told)) find(found, told, notice('plan-was-withdrawn', { number: plan.number }));
  if (joint.takenOff) find(found, told, notice('card-was-withdrawn', { number: joint.takenOff.number }));
  if (card !== undefined && card !== plan.slice.card) find(found, told, notice('plan-slice-differs', { number: plan.number }));
}
