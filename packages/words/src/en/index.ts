/** Every English text, by subject. A missing one does not compile. */

import { aroundTexts } from './around.ts';
import { assemblyTexts } from './assembly.ts';
import { chartTexts } from './chart.ts';
import { fastenerTexts } from './fastener.ts';
import { flangeTexts } from './flange.ts';
import { inputTexts } from './input.ts';
import { inspectionTexts } from './inspection.ts';
import { interactionTexts } from './interaction.ts';
import { jointTexts } from './joint.ts';
import { modelTexts } from './model.ts';
import { recordTexts } from './record.ts';
import { rotationalCapacityTexts } from './rotational-capacity.ts';
import { ruleTexts } from './rule.ts';
import { serverTexts } from './server.ts';
import { simulationTexts } from './simulation.ts';
import { structuralTexts } from './structural.ts';
import { supplyTexts } from './supply.ts';
import { toolCheckTexts } from './tool-check.ts';

export const EN_NOTICES = {
  ...chartTexts,
  ...fastenerTexts,
  ...flangeTexts,
  ...inputTexts,
  ...interactionTexts,
  ...jointTexts,
  ...modelTexts,
  ...recordTexts,
  ...ruleTexts,
  ...simulationTexts,
  ...serverTexts,
  ...structuralTexts,
  ...rotationalCapacityTexts,
  ...assemblyTexts,
  ...inspectionTexts,
  ...toolCheckTexts,
  ...aroundTexts,
  ...supplyTexts,
};
