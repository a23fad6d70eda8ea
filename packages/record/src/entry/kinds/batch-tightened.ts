import { judgePerson, judgePlan, judgeTool } from '../../fold/judge-work.ts';
import { tightenBolt } from '../../fold/tighten-bolt.ts';
import { tightenedOf } from '../../fold/tightened.ts';
import { positions, z } from '../field.ts';
import { defineKind } from '../kind.ts';
import { tighteningAbout, tighteningFields } from '../tightening-fields.ts';

const body = z.strictObject({ ...tighteningFields, bolts: positions });

/** Several bolts were told at once, in the order given: honest about being a batch. */
export const batchTightened = defineKind<z.infer<typeof body>>({
  version: 1,
  body,
  about: tighteningAbout,
  fold: {
    joint: (joint, told, look) => {
      const { bolts, step, card, tool } = told.body;
      judgePlan(joint, told, card, look);
      judgePerson(joint.found, told, look);
      if (tool !== undefined) judgeTool(joint.found, told, tool, look);
      const done = tightenedOf(told, true);
      for (const bolt of bolts) tightenBolt(joint, told, bolt, step, done);
    },
    tool: (tool, { body: { bolts } }) => {
      tool.tightened += bolts.length;
    },
    battery: (battery, { body: { bolts } }) => {
      battery.tightened += bolts.length;
      battery.boltsSinceChange += bolts.length;
    },
  },
});
