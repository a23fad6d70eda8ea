/** Every kind of entry there is: a file each, and its line here. */
import { assemblyChecked } from './assembly-checked.ts';
import { batchTightened } from './batch-tightened.ts';
import { batteryChanged } from './battery-changed.ts';
import { batteryRegistered } from './battery-registered.ts';
import { boltReplaced } from './bolt-replaced.ts';
import { boltTightened } from './bolt-tightened.ts';
import { boltTrouble } from './bolt-trouble.ts';
import { cardIssued } from './card-issued.ts';
import { cardWithdrawn } from './card-withdrawn.ts';
import { chartLoaded } from './chart-loaded.ts';
import { concessionGranted } from './concession-granted.ts';
import { correction } from './correction.ts';
import { datumConfirmed } from './datum-confirmed.ts';
import { deviceEnrolled } from './device-enrolled.ts';
import { deviceRevoked } from './device-revoked.ts';
import { gapRead } from './gap-read.ts';
import { gaugeRead } from './gauge-read.ts';
import { imported } from './imported.ts';
import { inspected } from './inspected.ts';
import { jobKept } from './job-kept.ts';
import { jointSigned } from './joint-signed.ts';
import { loosened } from './loosened.ts';
import { lotRegistered } from './lot-registered.ts';
import { nonconformanceRaised } from './nonconformance-raised.ts';
import { nonconformanceReinspected } from './nonconformance-reinspected.ts';
import { nonconformanceSettled } from './nonconformance-settled.ts';
import { noteWritten } from './note-written.ts';
import { personEnrolled } from './person-enrolled.ts';
import { personRevoked } from './person-revoked.ts';
import { photoTaken } from './photo-taken.ts';
import { planIssued } from './plan-issued.ts';
import { planWithdrawn } from './plan-withdrawn.ts';
import { pointReleased } from './point-released.ts';
import { retighteningDone } from './retightening-done.ts';
import { retighteningDue } from './retightening-due.ts';
import { shiftHandedOver } from './shift-handed-over.ts';
import { snugChecked } from './snug-checked.ts';
import { suitabilityTested } from './suitability-tested.ts';
import { toolChecked } from './tool-checked.ts';
import { toolCutOut } from './tool-cut-out.ts';
import { toolRegistered } from './tool-registered.ts';
import { toolSwapped } from './tool-swapped.ts';
import { toolWithdrawn } from './tool-withdrawn.ts';
import { valveIssued } from './valve-issued.ts';
import { valveTurned } from './valve-turned.ts';

export const KINDS = {
  'assembly-checked': assemblyChecked,
  'batch-tightened': batchTightened,
  'battery-changed': batteryChanged,
  'battery-registered': batteryRegistered,
  'bolt-replaced': boltReplaced,
  'bolt-tightened': boltTightened,
  'bolt-trouble': boltTrouble,
  'card-issued': cardIssued,
  'card-withdrawn': cardWithdrawn,
  'chart-loaded': chartLoaded,
  'concession-granted': concessionGranted,
  correction,
  'datum-confirmed': datumConfirmed,
  'device-enrolled': deviceEnrolled,
  'device-revoked': deviceRevoked,
  'gap-read': gapRead,
  'gauge-read': gaugeRead,
  imported,
  inspected,
  'job-kept': jobKept,
  'joint-signed': jointSigned,
  loosened,
  'lot-registered': lotRegistered,
  'nonconformance-raised': nonconformanceRaised,
  'nonconformance-reinspected': nonconformanceReinspected,
  'nonconformance-settled': nonconformanceSettled,
  'note-written': noteWritten,
  'person-enrolled': personEnrolled,
  'person-revoked': personRevoked,
  'photo-taken': photoTaken,
  'plan-issued': planIssued,
  'plan-withdrawn': planWithdrawn,
  'point-released': pointReleased,
  'retightening-done': retighteningDone,
  'retightening-due': retighteningDue,
  'shift-handed-over': shiftHandedOver,
  'snug-checked': snugChecked,
  'suitability-tested': suitabilityTested,
  'tool-checked': toolChecked,
  'tool-cut-out': toolCutOut,
  'tool-registered': toolRegistered,
  'tool-swapped': toolSwapped,
  'tool-withdrawn': toolWithdrawn,
  'valve-issued': valveIssued,
  'valve-turned': valveTurned,
} as const;

export type KindName = keyof typeof KINDS;
/** What an entry of a kind carries. */
export type BodyOf<K extends KindName> = Parameters<(typeof KINDS)[K]['about']>[0];
