import type { NoticeTexts } from '../notice-texts.ts';

export const jointTexts = {
  'no-bolts': { says: 'The joint has no bolts.', remedy: 'Enter how many bolts it has, or the flange it belongs to.' },
  'positions-wrong': {
    says: 'The subgroups do not make up the {boltCount} bolts of the joint (missing: {missing}; twice: {twice}).',
    remedy: 'Give each bolt to exactly one subgroup.',
  },
  'sequence-wrong': {
    says: 'The engineer’s sequence does not name each of the {boltCount} bolts once.',
    remedy: 'Correct the sequence; it is not completed by guessing.',
  },
  'tools-at-once-wrong': {
    says: '{tools} tools at once do not divide {boltCount} bolts evenly; the plan uses one.',
    remedy: 'Use a number of tools that divides the bolts.',
  },
  'tool-unknown': { says: 'Tool {serial} is not among the tools of the job.', remedy: 'Add it with its chart, or name another.' },
  'no-tool': { says: 'The job has no tool with a setting chart.', remedy: 'Add a tool with the chart from its certificate.' },
  'tool-chart-faulty': {
    says: 'The chart of tool {serial} has faults, so nothing is read from it.',
    remedy: 'Mend the chart; its faults are listed with the tool.',
  },
  'several-tools': {
    says: 'No single tool covers every step; the plan uses {tools}.',
    remedy: 'Bring all of them, and read the tool on the card at each step.',
  },
  'lot-unknown': { says: 'Lot {lot} is not among the lots of the job.', remedy: 'Add the lot with its certificate or test.' },
  'lot-failed': { says: 'Lot {lot} failed its test.', remedy: 'Do not use it. Take another lot, or test again after the cause is known.' },
  'turned-not-tested': {
    says: 'Lot {lot} was tested turning the {tested}; here the {turned} turns. A torque holds only as tested.',
    remedy: 'Turn the {tested}, or test the lot turning the {turned}.',
  },
  'datum-missing': {
    says: 'It is not said where bolt 1 is, which way numbering runs and from which side one looks.',
    remedy: 'Enter the datum, or have the crew mark bolt 1 on the steel and confirm it.',
  },
  'permit-missing': {
    says: 'A pressure joint needs its isolation or line-break permit before a nut is touched; none is entered.',
    remedy: 'Enter the permit number.',
  },
  'zone-missing': {
    says: 'It is not said whether the joint lies in a hazardous area.',
    remedy: 'Enter the zone of each joint, or “zone: none” for the whole job.',
  },
  'hot-work-missing': {
    says: 'Tool {tool} is an ignition source; in zone {zone} it needs a hot-work permit and a gas test.',
    remedy: 'Enter both numbers, or plan a tool without electricity.',
  },
  'wet-retest': {
    says: 'Rain is stated. Wet or rusted fasteners do not have the friction they were tested with.',
    remedy: 'Keep lots dry; test a wet lot again before it is tightened.',
  },
  'arm-length-unknown': {
    says: 'The arm of tool {serial} has no length, so its reaction force is unknown.',
    remedy: 'Measure it square from drive to contact and enter it.',
  },
  'arm-overloaded': {
    says: 'The step needs {torque}; the reaction arm is rated for {rating}.',
    remedy: 'Take an arm that is rated for the torque.',
  },
  'reaction-point-overloaded': {
    says: 'The arm pushes with {force}; its point may take {limit}.',
    remedy: 'Choose a stronger reaction point or a longer rated arm. Never lengthen an arm on site.',
  },
  'reaction-point-unknown': {
    says: 'The arm will push with {force}; no reaction point is named.',
    remedy: 'Name one that takes it: a tight neighbouring nut, a flange edge, a purpose-made stop.',
  },
  'socket-does-not-fit': {
    says: 'The {socket} socket meets the neighbouring hexagon at a pitch of {pitch}: {lacking} are lacking.',
    remedy: 'Use a thin-walled socket that is rated for the torque.',
  },
  'socket-meets-wall': {
    says: 'The {socket} socket meets the wall {wall} from the bolt.',
    remedy: 'Use a smaller socket, or turn the other part.',
  },
  'socket-unknown': {
    says: 'No socket of {acrossFlats} across flats is entered with the tool.',
    remedy: 'Enter its outer diameter, so that clearance can be checked.',
  },
  'yield-likely': {
    says: '{share} of the bolts would yield while they are tightened.',
    remedy: 'Check torque, friction and grade; take a setting or lubricant that leaves a margin.',
  },
  'below-target-likely': {
    says: '{share} of the bolts may stay below the target preload.',
    remedy: 'Less scatter helps: a tested lot, a better tool; or the engineer’s consent.',
  },
  'torque-unit-doubt': {
    says: '{torque} would mean {basis, select, yield {a bolt turned beyond yield at nut factor {k}} other {a nut factor of {k}}}; read in the other unit of torque it would be an ordinary figure.',
    remedy: 'Check whether the figure is in N·m or in lbf·ft.',
  },
  'torque-implausible': {
    says: '{torque} would mean {basis, select, yield {a bolt turned beyond yield at nut factor {k}} other {a nut factor of {k}, which no lubricant has}}.',
    remedy: 'Check torque, preload and size against the specification.',
  },
  'engineer-override': {
    says: 'The engineer’s {what} is used in place of ours.',
    remedy: 'Nothing to do; shown as theirs on plan and card.',
  },
  'figure-not-used': {
    says: 'The list gives a {what}; this rule set has no use for it, and the plan does not follow it.',
    remedy:
      'Leave it out, or name the rule set that takes it (as-specified for a torque or preload, flange-bolt-stress for a bolt stress).',
  },
  'friction-from-table': {
    says: 'Friction is taken from a table ({source}), not from a test of this lot.',
    remedy: 'Prefer a test: tables for the same words differ by half.',
  },
  'bolt-too-short': {
    says: 'Bolt length {length} does not reach: {thickness} clamped and a nut of {nut} need at least {needed}.',
    remedy: 'Take a longer bolt, or correct length or clamped thickness (Σt: plates, packs and washers).',
  },
  'bolt-below-clamp': {
    says: 'Bolt length {length} is less than the {thickness} clamped.',
    remedy: 'Take a longer bolt, or correct length or clamped thickness (Σt: plates, packs and washers).',
  },
  'clamp-below-thread': {
    says: 'Bolt length {length} leaves too little for nut and one pitch beyond {thickness} clamped.',
    remedy: 'Check length and clamped thickness.',
  },
  'qualification-expired': {
    says: 'The qualification of {person} ran out on {until}.',
    remedy: 'Renew it, or let someone qualified do the work.',
  },
} satisfies NoticeTexts<'joint'>;
