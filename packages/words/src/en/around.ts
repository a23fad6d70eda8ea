import type { NoticeTexts } from '../notice-texts.ts';

export const aroundTexts = {
  'loosening-torque': {
    says: 'The torque it was tightened with is not above zero.',
    remedy: 'Enter it, or the preload and friction it follows from.',
  },
  'loosening-unknown': {
    says: 'Nothing says what {joint} was tightened with.',
    remedy: 'Plan it first, or enter torque and tool; then loosen.',
  },
  'loosening-release-missing': {
    says: 'A pressure joint is opened only after isolation is proven; no permit, or nobody who gave it free, is entered.',
    remedy: 'Enter the isolation or line-break permit and the name of who released it.',
  },
  'loosening-setting-only': {
    says: '{setting} only loosens.',
    remedy: 'It must never tighten: lock the direction, and set it back before the next bolt is tightened.',
  },
  'loosening-tool-small': {
    says: 'Breaking loose may need {needed}; the largest setting is {largest}.',
    remedy: 'Take a larger tool or a multiplier. Never lengthen the arm, never hit a tool under load.',
  },
  'loosening-tool-near': {
    says: 'Breaking loose may need {needed}: nearly all the tool has, {largest}.',
    remedy: 'Have a larger tool ready, and penetrant.',
  },
  'loosening-socket': {
    says: 'Breaking loose may need {needed}; the socket and drive are rated for {rating}.',
    remedy: 'Take an impact-rated socket and drive of the next size.',
  },
  'loosening-bolt': {
    says: 'Breaking loose may need {needed}; a seized bolt is only good for {limit}.',
    remedy: 'Stop at that torque and change the method: penetrant, heat by permit, cut or split the nut.',
  },
  'loosening-penetrant': {
    says: 'Such nuts seize or split.',
    remedy: 'Soak with penetrant, clean the threads that stick out, and have a nut splitter ready.',
  },
  'lot-test-missing': {
    says: '{file} holds no suitability test of lot {lot}.',
    remedy: 'Enter the series under suitability with this lot’s id. Until then its joints stop.',
  },
  'lot-friction-twice': {
    says: 'Lot {lot} has friction entered and a suitability test; the test counts.',
    remedy: 'Keep one of the two.',
  },
  'lot-test-few': {
    says: 'Lot {lot}: {found, plural, =0 {no assembly} one {# assembly} other {# assemblies}} tested; {wanted} are wanted.',
    remedy: 'Test more assemblies of this lot.',
  },
  'lot-test-reading': {
    says: 'Lot {lot}, assembly {assembly}: a reading is not above zero.',
    remedy: 'Read the record again, or test another assembly.',
  },
  'lot-test-size': { says: 'Lot {lot}: size or specified preload is missing.', remedy: 'Enter both.' },
  'lot-k-class-none': {
    says: 'Lot {lot} meets no k-class: k_m = {mean}, V_k = {variation}.',
    remedy: 'Use it only with a method that needs no friction, or return it.',
  },
  'lot-force-low': {
    says: 'Lot {lot}: an assembly reached {found}; {wanted} is wanted.',
    remedy: 'The lot has failed: set it aside and test another.',
  },
  'lot-rotation-low': {
    says: 'Lot {lot}: an assembly turned less than it must before it gave way.',
    remedy: 'The lot has failed: set it aside and test another.',
  },
  'lot-rotation-untested': {
    says: 'Lot {lot}: rotation reserve was not measured.',
    remedy: 'Measure it where the method turns bolts past yield.',
  },
  'lot-test-future': { says: 'Lot {lot} is said to be tested on {tested}, after the day of the work.', remedy: 'Read the date again.' },
  'lot-test-old': {
    says: 'The test of lot {lot} is {days} days old; {allowed} are allowed.',
    remedy: 'Test again: lubricants age.',
  },
  'lot-test-temperature': {
    says: 'Bolts of lot {lot} are {apart} °C from the temperature they were tested at.',
    remedy: 'Test at the temperature of the work; beyond {usual} °C apart friction is another.',
  },
  'lot-retest': {
    says: 'Lot {lot} was wet or lubricated again after its test.',
    remedy: 'Its friction is unknown: test again before it is used.',
  },
  'sample-none': { says: 'No joint asks for a sample.', remedy: 'Enter execution-class in job.yaml, or give the number of bolts.' },
  'sample-size': { says: '“{size}” bolts cannot be drawn from {bolts}.', remedy: 'Give a whole number from 1 to the number of bolts.' },
  'sample-seed': { says: '“{seed}” is not a seed.', remedy: 'Give a whole number from 0 on, and record it.' },
  'sequential-limits': {
    says: 'A plan of type {type} takes from {least} to {most} bolts.',
    remedy: 'Enter the lines of the standard for that type.',
  },
  'sequential-short': { says: 'The lines do not reach {most} bolts.', remedy: 'Enter accept and reject for each number of bolts.' },
  'sequential-crossed': { says: 'After {bolts} bolts the same count would accept and reject.', remedy: 'Read both lines again.' },
  'sequential-undecided': {
    says: 'After {most} bolts the plan must accept or reject.',
    remedy: 'Enter both limits for the last bolt, one apart.',
  },
  'sequential-over': {
    says: 'The verdict is {verdict}: no further bolt counts.',
    remedy: 'Begin another plan if more is to be looked at.',
  },
  'sequential-twice': { says: 'Bolt {bolt} was looked at before.', remedy: 'Take the next bolt of the draw; a bolt counts once.' },
  'gap-none': { says: 'No gap was read.', remedy: 'Read it at 4 or 8 points round the flange.' },
  'gap-points': { says: 'Pass {pass} has {points} readings.', remedy: 'Read the gap at 4 or 8 points.' },
  'gap-negative': { says: 'Pass {pass}, point {point}: a gap is not below zero.', remedy: 'Read it again.' },
  'gap-uneven': {
    says: 'The gap differs by {spread} round the flange; {allowed} is allowed.',
    remedy: 'Stop. Ease the narrow side, pull up the wide side with low settings, and read again.',
  },
} satisfies NoticeTexts<'around'>;
