import { judgePerson, judgePlan, judgeTool } from '../../fold/judge-work.ts';
import { tightenBolt } from '../../fold/tighten-bolt.ts';
import { tightenedOf } from '../../fold/tightened.ts';
import { field, z } from '../field.ts';
import { defineKind } from '../kind.ts';
import { tighteningAbout, tighteningFields } from '../tightening-fields.ts';

const body = z.strictObject({ ...tighteningFields, bolt: field.position, angleMilliDegree: z.optional(field.count) });

/** One bolt was tightened in one step. */
export const boltTightened = defineKind<z.infer<typeof body>>({
  version: 1,
  body,
  about: tighteningAbout,
  fold: {
    joint: (joint, told, look) => {
      const { bolt, step, card, tool } = told.body;
      judgePlan(joint, told, card, look);
      judgePerson(joint.found, told, look);
      if (tool !== undefined) judgeTool(joint.found, told, tool, look);
      tightenBolt(joint, told, bolt, step, tightenedOf(told, false));
    },
    tool: (tool) => {
      tool.tightened += 1;
    },
    battery: (battery) => {
      battery.tightened += 1;
      battery.boltsSinceChange += 1;
    },
  },
});
