import type { NoticeTexts } from '../notice-texts.ts';

export const aroundTexts = {
  'loosening-torque': {
    says: 'The torque it was tightened with is not above zero.',
    remedy: 'Enter it, or the preload and friction it follows from.',
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
  'lot-torque-high': {
    says: 'Lot {lot}, assembly {assembly}: it took {found}; {limit} is the most it may take.',
    remedy: 'The combination of lots has failed: clean and lubricate as its maker says and test again, or return it.',
  },
  'lot-damaged': {
    says: 'Lot {lot}, assembly {assembly}: stripped or broken.',
    remedy: 'The combination of lots has failed: set it aside.',
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
  'moment-unreadable': { says: 'A time is missing or is none.', remedy: 'Enter date, time and zone.' },
  'inspection-too-early': {
    says: '{hours} h since the last bolt; the inspection is made from {from} h on.',
    remedy: 'Wait: fresh joints still settle, and would pass too easily.',
  },
  'inspection-too-late': {
    says: '{hours} h since the last bolt; the inspection was due within {until} h.',
    remedy: 'Inspect all the same, say so in the record, and let the engineer judge it.',
  },
  'recheck-open': {
    says: 'Joint {joint} has not been tried again since its last pass.',
    remedy: 'Go round once more after {hours} h, before pressure.',
  },
  'recheck-too-early': {
    says: 'Joint {joint} was tried again less than {hours} h after its last pass: the gasket had not settled.',
    remedy: 'Go round again now, before pressure.',
  },
  'inspected-not-drawn': {
    says: 'Bolt {bolt} of joint {joint} was not drawn.',
    remedy: 'Inspect the drawn bolts; others may be looked at as well, in a record of their own.',
  },
  'inspected-twice': {
    says: 'Bolt {bolt} of joint {joint} stands in the record twice.',
    remedy: 'A bolt counts once. Correct the entry that is wrong.',
  },
  'torque-proves-nothing': {
    says: 'These bolts are turned past yield by their method, or their torque proves nothing.',
    remedy: 'Look at marks, feelers or splines as the method says; no torque check.',
  },
  'inspected-with-own-tool': {
    says: 'Tool {tool} tightened these bolts; it cannot inspect them.',
    remedy: 'Use the inspector’s own certified wrench.',
  },
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
  'gap-none': { says: 'No gap was read.', remedy: 'Read it at 4 or 8 points round the flange.' },
  'gap-points': { says: 'Pass {pass} has {points} readings.', remedy: 'Read the gap at 4 or 8 points.' },
  'gap-negative': { says: 'Pass {pass}, point {point}: a gap is not below zero.', remedy: 'Read it again.' },
  'gap-uneven': {
    says: 'The gap differs by {spread} round the flange; {allowed} is allowed.',
    remedy: 'Stop. Ease the narrow side, pull up the wide side with low settings, and read again.',
  },
} satisfies NoticeTexts<'around'>;
