import type { Drafts, Subject } from '../entry/kind.ts';
import { startJoint } from './joint-draft.ts';

/** The state of everything before its first entry. */
export const START: { readonly [S in Subject]: (id: string) => Drafts[S] } = {
  joint: startJoint,
  tool: (serial) => ({ serial, certificates: [], charts: [], checks: [], cutOuts: [], tightened: 0, withdrawn: false }),
  battery: (battery) => ({ battery, charges: [], readings: [], boltsSinceChange: 0, firstReading: 0, tightened: 0 }),
  person: (person) => ({ person, roles: [], revoked: false }),
  device: (device) => ({ device, enrolled: false, revoked: false }),
  lot: (lot) => ({ lot, tests: [] }),
  nonconformance: (id) => ({ id, bolts: [], settlements: [], reinspections: [] }),
  book: () => ({
    plans: [],
    notes: [],
    photos: [],
    concessions: [],
    handovers: [],
    imports: [],
    retightenings: [],
    unreadable: [],
    found: [],
  }),
};
