import type { NoticeTexts } from '../notice-texts.ts';

export const interactionTexts = {
  'compliance-size': { says: 'A compliance matrix of {bolts} bolts cannot be used; between 1 and {most} can.', remedy: 'Split the joint.' },
  'compliance-not-square': {
    says: 'The compliance matrix does not have {bolts} rows of {bolts} figures.',
    remedy: 'Enter one row and one column for each bolt.',
  },
  'compliance-not-symmetric': {
    says: 'The compliance matrix is not symmetric at bolts {first} and {second}.',
    remedy: 'What bolt {first} does to bolt {second} must equal what {second} does to {first}; measure or enter the pair again.',
  },
  'compliance-not-definite': {
    says: 'The compliance matrix is not that of an elastic joint: it is not positive definite.',
    remedy: 'Look for a wrong sign, a wrong unit (mm/N) or a bolt resilience that is missing on the diagonal.',
  },
  'members-impossible': {
    says: 'How bolts act on each other was not computed: the dimensions describe {what}.',
    remedy: 'Correct them in members.yaml.',
  },
  'members-unknown': {
    says: 'How bolts act on each other was not computed: {what} is not known.',
    remedy: 'Enter it in the joint list or in members.yaml.',
  },
  'gasket-modulus-needed': {
    says: 'How bolts act on each other was not computed: nothing is typical of this gasket.',
    remedy: 'Enter its thickness and modulus in members.yaml (maker’s data, EN 13555).',
  },
  'gasket-modulus-assumed': {
    says: 'The gasket’s stiffness is only typical of its kind; how bolts act on each other follows it.',
    remedy: 'Enter the maker’s modulus (EN 13555) for this gasket in members.yaml.',
  },
  'gasket-load-above': {
    says: 'The bolts together press on the gasket with {force}; its greatest assembly stress allows {greatest}.',
    remedy: 'Ask the engineer for a lower bolt stress or another gasket; no setting of this bolt stress spares it.',
  },
  'gasket-load-below': {
    says: 'The bolts together press on the gasket with {force}; its least assembly stress asks for {least}.',
    remedy: 'Ask the engineer for a higher bolt stress or another gasket; no setting of this bolt stress seats it.',
  },
  'uneven-by-custom': {
    says: 'Tightening one bolt relieves its neighbours: after {rounds} rounds the forces still differ by {spread}.',
    remedy: 'Go round until no nut moves: expect {more, plural, one {# round} other {# rounds}} more before every bolt is within {wanted}.',
  },
  'uneven-still': {
    says: 'After {rounds} rounds a bolt is still {worst} off its target; {wanted} was wanted.',
    remedy: 'Ask the engineer: another gasket or lubricant, several tools at once, or a schedule with forces above the target.',
  },
  'peak-above-ceiling': {
    says: 'While others are tightened a bolt rises to {peak}; above {ceiling} it may be harmed.',
    remedy: 'Ask the engineer: more rounds with rising settings, several tools at once, or a lower preload.',
  },
  'above-target-approval': {
    says: 'This schedule takes bolts to {peak} for a while; the target is {target}.',
    remedy: 'The engineer approves the schedule for this joint, and a second person confirms every change of setting.',
  },
  'above-target-refused': {
    says: 'No bolt may stand above its target by {rule}; the greatest bolt force given for this joint is not used.',
    remedy: 'Tighten with one setting a round.',
  },
  'several-settings-none': {
    says: 'No schedule of several settings was found below {cap}.',
    remedy: 'Tighten with one setting a round, or ask the engineer for another greatest bolt force.',
  },
} satisfies NoticeTexts<'interaction'>;
