import { ROLES } from '@clampwright/record';
import type { EndpointName } from '@clampwright/sync';

export type Role = (typeof ROLES)[number];
/** Who may ask: anyone at all, an enrolled device, or a signed-in person in a role. */
export type Who = 'anyone' | 'device' | Role;

const SIGNED_IN: readonly Who[] = ROLES;
const READERS: readonly Who[] = ['device', ...ROLES];

/** The one table of who may ask what. The server enforces it, the tests walk it; an endpoint without a line does not compile. */
export const ACCESS: { readonly [E in EndpointName]: readonly Who[] } = {
  health: ['anyone'],
  metrics: ['anyone'],
  document: ['anyone'],
  signIn: ['anyone'],
  enrol: ['anyone'],
  whoAmI: SIGNED_IN,
  signOut: SIGNED_IN,
  changePassword: SIGNED_IN,
  offerPasskey: SIGNED_IN,
  addPasskey: SIGNED_IN,
  passkeys: SIGNED_IN,
  removePasskey: SIGNED_IN,
  askPasskey: ['anyone'],
  signInWithPasskey: ['anyone'],
  addAccount: ['planner'],
  accounts: ['planner'],
  removeAccount: ['planner'],
  openEnrolment: ['planner', 'store'],
  devices: ['planner', 'store'],
  revokeDevice: ['planner', 'store'],
  setDeviceBooks: ['planner', 'store'],
  setPin: ['planner'],
  pins: ['device'],
  addBook: ['planner'],
  books: READERS,
  pushBatch: ['device'],
  entries: READERS,
  checkpoint: READERS,
  inclusion: READERS,
  consistency: READERS,
  state: READERS,
  joint: READERS,
  nonconformances: READERS,
  events: READERS,
  putAttachment: ['device', 'planner', 'inspector', 'store'],
  attachment: READERS,
  eraseAttachment: ['planner'],
  handover: ['planner', 'inspector', 'client'],
  report: ['planner', 'inspector', 'client'],
  exportBook: ['planner'],
  backup: ['planner'],
  organisation: READERS,
  setOrganisation: ['planner'],
};
