import type { NoticeTexts } from '../notice-texts.ts';

export const inspectionTexts = {
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
} satisfies NoticeTexts<'inspection'>;
