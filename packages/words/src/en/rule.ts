import type { NoticeTexts } from '../notice-texts.ts';

export const ruleTexts = {
  'rule-unknown': { says: 'No rule set {rule} is known.', remedy: 'Choose one of those that “clampwright init” lists in job.yaml.' },
  'edition-unknown': { says: 'The rule set has no edition {edition}.', remedy: 'Known editions: {known}.' },
  'structural-size-too-small': {
    says: '{size} is below M12, the smallest size EN 1090-2 lets be preloaded.',
    remedy: 'Ask the engineer for another size, or for a preload of this joint as specified.',
  },
  'grade-not-preloadable': {
    says: 'Grade {grade} may not be preloaded by {rule}.',
    remedy: 'Use the grade the rule set is made for, or let the engineer specify preload and method.',
  },
  'k-class-needed': {
    says: 'The {method} needs the k-class of the lot ({needed}); none is given.',
    remedy: 'Enter the k-class from the label of the lot.',
  },
  'k-class-insufficient': {
    says: 'The {method} needs k-class {needed}; the lot has {kClass}.',
    remedy: 'Use a lot of the right class, or a method that accepts this one.',
  },
  'lot-untested': {
    says: 'The {method} needs k_m of this very lot; no test or certificate of it is entered.',
    remedy: 'Enter k_m and V_k from the lot’s certificate, or make a suitability test.',
  },
  'clamp-thickness-needed': {
    says: 'The angle depends on the clamped thickness, which is not given.',
    remedy: 'Enter Σt: all plates, packs and washers between head and nut.',
  },
  'bolt-length-needed': { says: 'The rotation depends on the bolt length, which is not given.', remedy: 'Enter the nominal bolt length.' },
  'angle-not-tabulated': {
    says: 'At {thickness} clamped the table gives no angle; it ends at {limit}.',
    remedy: 'Have the angle determined by a procedure test on this joint, or change the method.',
  },
  'assembly-needed': {
    says: 'The {method} needs bolt, nut and washer of one preloading assembly (EN 14399); the joint names no system, or plain bolts.',
    remedy: 'Write {needed} in the column “system” of the joint list, as the delivery’s label says, or choose a method for plain bolts.',
  },
  'system-needed': { says: 'The {method} is made for {needed} assemblies.', remedy: 'Use {needed}, or another method.' },
  'size-not-in-table': {
    says: '{size} has no value in {table}.',
    remedy: 'Read the edition in force, or let the engineer give the figure for this joint.',
  },
  'bolt-stress-needed': {
    says: 'No assembly bolt stress is given for this flange.',
    remedy: 'Ask the engineer: it follows from gasket, flange and bolts together.',
  },
  'bolt-stress-above-yield': {
    says: 'The bolt stress of {stress} reaches the yield strength, {yield}.',
    remedy: 'Check stress, area and grade with the engineer.',
  },
  'bolt-stress-high': {
    says: 'The bolt stress is {share} of yield; more than {usual} is unusual for a flange.',
    remedy: 'Have the engineer confirm gasket stress and flange rotation.',
  },
  'friction-unknown': {
    says: 'Nothing is known of the friction of this lot and lubricant.',
    remedy: 'Enter a nut factor or coefficients of friction with their source; an unknown one is not replaced by a usual one.',
  },
  'coefficients-needed': {
    says: 'VDI 2230 needs the coefficients of thread and bearing friction, not a nut factor.',
    remedy: 'Enter both coefficients, or a friction class.',
  },
  'figure-needed': {
    says: 'The joint is to be tightened as specified, but no preload or torque is given.',
    remedy: 'Enter the engineer’s preload or torque for this joint.',
  },
  'preload-basis-needed': {
    says: 'A torque alone does not say which preload it gives, nor a preload which torque.',
    remedy: 'Enter the nut factor of lot and lubricant, or both preload and torque.',
  },
  'tested-torque-needed': {
    says: 'A calibrated wrench is set by a test of this lot; a torque from a table or formula does not count.',
    remedy: 'Verify at least three assemblies of the lot in a tension calibrator before installation and enter the result.',
  },
} satisfies NoticeTexts<'rule'>;
