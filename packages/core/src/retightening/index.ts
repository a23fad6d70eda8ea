/** When joints are tightened or looked at again. */
export {
  type Due,
  type DueWindow,
  duties,
  FIRST_RETIGHTENING_HOURS,
  type FinishedJoint,
  firstRetightening,
  type MaintenanceRule,
  RETIGHTENING_SOURCE,
  sampleOf,
  TOWER_TOP_LOSS,
  YEARLY_SAMPLE,
} from './due.ts';
