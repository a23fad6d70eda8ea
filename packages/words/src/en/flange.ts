import type { NoticeTexts } from '../notice-texts.ts';

export const flangeTexts = {
  'flange-unknown': {
    says: '{standard} lists no flange {size} {rating}.',
    remedy: 'Check size and rating on the flange’s edge; or enter bolts, bolt circle and hole by hand.',
  },
  'gasket-unknown': {
    says: 'No figures are known for the gasket “{gasket}”.',
    remedy: 'Enter the figures of the gasket’s maker with their source.',
  },
  'assembly-stress-limited': {
    says: 'The gasket asks for a bolt stress of {wanted}; {by, select, greatest {the greatest bolt stress holds it at} least {the least bolt stress raises it to} other {the flange holds it at}} {selected}.',
    remedy: 'Read the checks of gasket and flange at this stress before going on.',
  },
  'gasket-not-seated': {
    says: 'At a bolt stress of {stress} the gasket is not seated; it needs {limit}.',
    remedy: 'Let the designer choose another gasket, stronger bolts or a narrower contact face.',
  },
  'gasket-unloads-in-service': {
    says: 'At a bolt stress of {stress} too little is left on the gasket in service; it needs {limit}.',
    remedy: 'Let the designer choose another gasket or stronger bolts, or look at pressure and relaxation again.',
  },
  'gasket-crushed': {
    says: 'A bolt stress of {stress} crushes the gasket; it bears {limit}.',
    remedy: 'Lower the bolt stress, or let the designer choose a gasket that bears more.',
  },
  'flange-rotates-too-far': {
    says: 'At a bolt stress of {stress} the flanges rotate more than the gasket bears; the limit is {limit}.',
    remedy: 'Lower the bolt stress, or let the designer look at flange and gasket again.',
  },
} satisfies NoticeTexts<'flange'>;
