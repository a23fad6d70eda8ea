import type { JointWork } from '../report/joint-work.ts';
import { minuteOf, type Names } from '../report/names.ts';
import type { FormFields, FormValue } from './fill-form.ts';

/** What a client's form can ask of what was done at a joint, from the log. Listed in docs/form-fields.md. */
export const workFields = ({ tag, state, bolts, done, rows, crewSigned, inspectorSigned }: JointWork, names: Names): FormFields =>
  new Map<string, FormValue | readonly FormValue[]>([
    ['joint.tag', tag],
    ['joint.bolts', bolts],
    ['joint.plan', state.plan?.number],
    ['done.bolts', done],
    ['done.crew', crewSigned && names.person(crewSigned.by)],
    ['done.crew-at', crewSigned && minuteOf(crewSigned.at)],
    ['done.inspector', inspectorSigned && names.person(inspectorSigned.by)],
    ['done.inspector-at', inspectorSigned && minuteOf(inspectorSigned.at)],
    ['work.bolt', rows.map(({ bolt }) => bolt)],
    ['work.step', rows.map(({ step }) => step)],
    ['work.tool', rows.map(({ told }) => told.tool)],
    ['work.setting', rows.map(({ told }) => told.setting)],
    ['work.end', rows.map(({ told }) => told.end)],
    ['work.angle', rows.map(({ told }) => (told.angleMilliDegree === undefined ? undefined : told.angleMilliDegree / 1000))],
    ['work.by', rows.map(({ told }) => names.person(told.by))],
    ['work.at', rows.map(({ told }) => minuteOf(told.at))],
  ]);
