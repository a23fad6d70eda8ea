import type { NoticeTexts } from '../notice-texts.ts';

export const assemblyTexts = {
  'protrusion-short': {
    says: 'Bolt {bolt}: {found} of thread stick out of the nut; {wanted} is the least.',
    remedy: 'Take a longer bolt.',
  },
  'clear-threads-few': {
    says: 'Bolt {bolt}: {found, plural, =0 {no full thread} one {# full thread} other {# full threads}} between nut and shank; {wanted} at least.',
    remedy: 'Take the right bolt length, or a washer more under the head.',
  },
  'plates-step': {
    says: 'Plates of one layer differ by {found}; {allowed} is allowed.',
    remedy: 'Put in a packing plate of the right thickness.',
  },
  'packs-wrong': {
    says: '{count, plural, one {The packing plate is} other {# packing plates are}} not as allowed: at least 2 mm each, three at most.',
    remedy: 'Use fewer and thicker ones.',
  },
  'slip-surface-other': {
    says: 'The slip surface is specified as class {specified}; class {found} was found.',
    remedy: 'Stop. Prepare the surface as specified, or ask the engineer what the found one carries.',
  },
  'gasket-other': {
    says: 'The gasket is {found}; the specification says {wanted}.',
    remedy: 'Get the right gasket. A torque is valid for its own gasket only.',
  },
  'gasket-used': { says: 'The gasket is not new.', remedy: 'Use a new one. A gasket is never used twice.' },
  'gasket-faces': {
    says: 'The seating faces are not found clean and sound.',
    remedy: 'Clean and look at both; radial marks across the seat go to the engineer.',
  },
} satisfies NoticeTexts<'assembly'>;
