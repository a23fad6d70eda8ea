/** The input of a plan. */
export {
  type Access,
  boltCountOf,
  type Conditions,
  type Datum,
  type Job,
  type Joint,
  type Layout,
  type Lot,
  type Person,
  type Socket,
  type Subgroup,
  type Tool,
} from './job.ts';
