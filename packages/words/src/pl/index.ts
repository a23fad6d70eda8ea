/** What notices say in Polish, by subject. A missing one does not compile. */

import type { NoticeCatalogue } from '../notice-texts.ts';
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
import { placeTexts } from './place.ts';
import { recordTexts } from './record.ts';
import { rotationalCapacityTexts } from './rotational-capacity.ts';
import { ruleTexts } from './rule.ts';
import { serverTexts } from './server.ts';
import { simulationTexts } from './simulation.ts';
import { structuralTexts } from './structural.ts';
import { supplyTexts } from './supply.ts';
import { terms } from './terms.ts';
import { toolCheckTexts } from './tool-check.ts';

export const NOTICES_PL: NoticeCatalogue = {
  notices: {
    ...aroundTexts,
    ...assemblyTexts,
    ...chartTexts,
    ...fastenerTexts,
    ...flangeTexts,
    ...inputTexts,
    ...inspectionTexts,
    ...interactionTexts,
    ...jointTexts,
    ...modelTexts,
    ...recordTexts,
    ...rotationalCapacityTexts,
    ...ruleTexts,
    ...serverTexts,
    ...simulationTexts,
    ...structuralTexts,
    ...supplyTexts,
    ...toolCheckTexts,
  },
  place: placeTexts,
  terms,
};
