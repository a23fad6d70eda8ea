/** One file per topic; the key is the row's topic. Evaluators only map a row's givens to exported functions of the engine. */
import type { Evaluators } from '../row.ts';
import { bearingPressures } from './bearing-pressure.ts';
import { charts, mixups } from './charts.ts';
import {
  angleDe,
  assemblyRules,
  combinedMethod,
  en1090PreloadTarget,
  en1090WorkedExamples,
  inspectionDe,
  inspectionEn,
  inspectionSampling,
  kClass,
  preloadTargetDe,
  slipEn,
  torqueDe,
  torqueMethod,
} from './en-1090.ts';
import { boltForceScatter, flangeTorques, flangeWorkedExample, pnFlanges } from './flange-metric.ts';
import { alignment, asmeFlanges, disassembly, elongations, flangeDerived, nutFactorTorque, passSchedule, pcc1Table } from './flange-us.ts';
import { frictionTables, nutFactors } from './friction-tables.ts';
import { fullExamples } from './full-example.ts';
import { gasketFactorRows, gasketLoadRows, gasketStressRows } from './gasket-us.ts';
import { inchHexagons, inchLengths, inchProofLoads, inchStrengths, inchThreads } from './inch-fastener.ts';
import { jointExamples } from './joint-examples.ts';
import { jointSteps } from './joint-steps.ts';
import { loosenings } from './loosening.ts';
import { hexagons, holes, structuralGeometry, washers } from './metric-hexagon.ts';
import { headGeometry, metricThreads } from './metric-thread.ts';
import { metricProofLoads, nutProofLoads, propertyClasses, stainless, ultimateLoads } from './property-class.ts';
import { reactions } from './reaction.ts';
import { records, suitability } from './records.ts';
import { resilience } from './resilience.ts';
import { scatter } from './scatter.ts';
import { stressState } from './stress-state.ts';
import {
  arbitration,
  calibratedWrench,
  directTensionIndicators,
  installation,
  preinstallVerification,
  rotationalCapacity,
  slipRows,
  structuralPretension,
  turnOfNut,
} from './structural-us.ts';
import { batteries, valves } from './supply.ts';
import { threadStripping } from './thread-stripping.ts';
import { tightenSequence } from './tighten-sequence.ts';
import { tighteningFactors, tighteningScatter } from './tightening-factor.ts';
import { calibrations, toolCapability, torqueTools } from './tool-checks.ts';
import { frictionFromTest, torqueEquation } from './torque-equation.ts';
import { assemblyPreloads, assemblyTorques, vdi2230 } from './vdi-assembly.ts';
import {
  appendix2Examples,
  assemblyStressExamples,
  flangeTorqueExamples,
  longFormExamples,
  preloadBandExamples,
} from './worked-flange-us.ts';
import { structuralExamples } from './worked-structural-us.ts';

export const EVALUATORS: Readonly<Record<string, Evaluators>> = {
  'assembly-preload': assemblyPreloads,
  'assembly-torque': assemblyTorques,
  friction: { ...frictionFromTest, ...frictionTables },
  'stress-state': stressState,
  'tighten-sequence': tightenSequence,
  'torque-equation': torqueEquation,
  'bearing-pressure': bearingPressures,
  'bolt-force-scatter': boltForceScatter,
  flange: pnFlanges,
  geometry: structuralGeometry,
  'head-geometry': headGeometry,
  hexagon: hexagons,
  hole: holes,
  'nut-factor': nutFactors,
  'nut-proof-load': nutProofLoads,
  'property-class': propertyClasses,
  stainless,
  thread: metricThreads,
  'thread-stripping': threadStripping,
  'tightening-factor': tighteningFactors,
  'tightening-scatter': { ...tighteningScatter, ...scatter },
  'torque-flange': flangeTorques,
  'ultimate-load': ultimateLoads,
  washer: washers,
  'worked-example': {
    ...en1090WorkedExamples,
    ...appendix2Examples,
    ...assemblyStressExamples,
    ...flangeTorqueExamples,
    ...flangeWorkedExample,
    ...jointExamples,
    ...jointSteps,
    ...longFormExamples,
    ...preloadBandExamples,
    ...structuralExamples,
  },
  'proof-load': { ...metricProofLoads, ...inchProofLoads },
  vdi2230,
  battery: batteries,
  valve: valves,
  calibration: { ...charts, ...calibrations },
  records,
  suitability,
  'tool-capability': toolCapability,
  'torque-tool': torqueTools,
  mixups,
  loosening: loosenings,
  reaction: reactions,
  resilience,
  'full-example': fullExamples,
  alignment,
  'bolt-length': inchLengths,
  'calibrated-wrench': calibratedWrench,
  disassembly,
  dti: directTensionIndicators,
  elongation: elongations,
  'flange-derived': flangeDerived,
  'flange-dimension': asmeFlanges,
  'gasket-factor': gasketFactorRows,
  'gasket-load': gasketLoadRows,
  'gasket-stress-limit': gasketStressRows,
  'hex-dimensions': inchHexagons,
  inspection: { ...arbitration, ...inspectionEn },
  'inspection-DE': inspectionDe,
  'inspection-sampling': inspectionSampling,
  'angle-DE': angleDe,
  'combined-method': combinedMethod,
  'k-class': kClass,
  'preload-target-DE': preloadTargetDe,
  'slip-resistance': slipEn,
  'torque-DE': torqueDe,
  'torque-method': torqueMethod,
  ...assemblyRules,
  installation,
  'material-strength': inchStrengths,
  'pass-schedule': passSchedule,
  'pcc1-torque-table': pcc1Table,
  'preinstall-verification': preinstallVerification,
  'preload-target': { ...structuralPretension, ...en1090PreloadTarget },
  'rotational-capacity': rotationalCapacity,
  slip: slipRows,
  'thread-geometry': inchThreads,
  torque: nutFactorTorque,
  'turn-of-nut': turnOfNut,
};
