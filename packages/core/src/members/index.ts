/** What bolts clamp, and how it gives. */
export { gasketStiffness, TYPICAL_GASKET_SOURCE } from './gasket-modulus.ts';
export { type Bolting, type MemberCompliance, type MemberModel, memberCompliance } from './member-compliance.ts';
export { GASKET_KINDS, type GasketGiven, type GasketKind, type Members, STEEL, type Wall } from './members.ts';
export { dnPipe, npsPipe, type Pipe } from './pipe.ts';
export { type FlangeRing, standardFlangeRing } from './standard-flange-ring.ts';
