import type { NoticeTexts } from '../notice-texts.ts';

export const supplyTexts = {
  'battery-rating': {
    says: 'Battery {serial}: rated voltage or capacity is unknown or absurd.',
    remedy: 'Read both on its label, V and Ah.',
  },
  'battery-health': {
    says: 'Battery {serial}: health is not between 0 and 100 %.',
    remedy: 'Enter 100 % for a new one; less by its cycles.',
  },
  'battery-gauge': { says: 'Battery {serial}: “{lit}” is no reading of a gauge of four.', remedy: 'Count the lit segments: 0 to 4.' },
  'battery-temperature': { says: 'Battery {serial}: its temperature is absurd.', remedy: 'Enter °C of the battery, not of the air.' },
  'battery-charge': {
    says: 'Battery {serial}: its charge is below nothing or above full.',
    remedy: 'Read the gauge again: 0 to 4 segments.',
  },
  'battery-cells': {
    says: 'Battery {serial}: its cells, the tool’s current or cut-off, or the torque is not above zero.',
    remedy: 'Take cells from the battery’s data sheet, current and cut-off from the bench.',
  },
  'gauge-reading': { says: '“{lit}” is no reading of a gauge of four.', remedy: 'Count the lit segments: 0 to 4.' },
  'energy-impossible': {
    says: 'The energy of a full battery is unknown or not above zero.',
    remedy: 'Read V and Ah on its label.',
  },
  'draw-impossible': {
    says: 'The draw of a bolt is not above zero, or its least is above its most.',
    remedy: 'Work it out from torque and rotation, or from logged drops of the gauge.',
  },
  'battery-no-working': {
    says: 'Battery {serial} is at {celsius} °C; it works from {low} to {high} °C.',
    remedy: 'Take one that was kept warm, or let it cool.',
  },
  'battery-no-charging': {
    says: 'Battery {serial} is at {celsius} °C; it may be charged from {low} to {high} °C.',
    remedy: 'Never charge one brought in from frost: let it warm, or cool, first.',
  },
  'battery-first-charge': { says: 'Battery {serial} is new and only part-charged.', remedy: 'Charge it fully before its first work.' },
  'battery-low': {
    says: 'Battery {serial} shows one segment or none: that guarantees nothing.',
    remedy: 'Decide now: change, or is it enough for the bolts that remain? Never begin an angle step with it.',
  },
  'battery-cannot-push': {
    says: 'The step needs {torque}; battery {serial} at {celsius} °C and its charge can push {greatest}.',
    remedy: 'Take a warm and full battery, a larger one, or another tool. Do not try the bolt.',
  },
  'batteries-too-few': {
    says: '{pulls, plural, one {# pull is} other {# pulls are}} not covered by the batteries at hand; {more, plural, one {# full one more is} other {# full ones more are}} needed.',
    remedy: 'Bring or charge them before the first joint.',
  },
  'batteries-too-weak': {
    says: 'No battery at hand is sure to do a single one of these bolts.',
    remedy: 'Take a tool with a larger battery, or one on the mains.',
  },
  'joint-not-covered': {
    says: 'The batteries at hand do not cover every step of joint {joint}.',
    remedy: 'Do not begin it until they do.',
  },
  'pull-without-draw': {
    says: 'What bolt {bolt} of joint {joint} takes from a battery is not known.',
    remedy: 'Enter its torque and rotation.',
  },
  'draw-assumed': {
    says: 'The draw of a bolt rests on {drops, plural, =0 {no logged drop} one {# logged drop} other {# logged drops}} of the gauge: it is an assumption.',
    remedy: 'Log the bolt at which the gauge drops; each drop sharpens it.',
  },
  'drop-count': {
    says: '“{bolts}” bolts between two drops of the gauge cannot be.',
    remedy: 'Enter how many bolts were finished between them.',
  },
  'log-too-short': {
    says: 'A log of {found, plural, =0 {nothing} one {# reading} other {# readings}} says too little; {least} are needed.',
    remedy: 'Log more charges or jobs. Nothing is estimated from so few.',
  },
  'log-impossible': {
    says: 'A log holds readings below zero or none at all, or its confidence is not between 50 and 100 %.',
    remedy: 'Correct the entry. Nothing is learnt from it as it stands.',
  },
  'works-all-alike': {
    says: 'All jobs took the same work: overhead and efficiency cannot be told apart.',
    remedy: 'Log jobs of another torque or rotation as well.',
  },
  'socket-reading': {
    says: 'Charging on the road: the fuse of the socket or the current is not above zero.',
    remedy: 'Read the fuse on the socket or in the fuse box; never guess it.',
  },
  'socket-fuse': {
    says: 'Charging on the road would draw {current} A; the socket is fused at {fuse} A.',
    remedy: 'Charge with less current, or from a socket of a larger fuse. Never put a larger fuse into the same socket.',
  },
  'socket-near-fuse': {
    says: 'Charging on the road draws {current} A from a socket fused at {fuse} A: more than it should give for long.',
    remedy: 'One battery at a time, with the engine running.',
  },
  'supply-reading': {
    says: 'Tool {serial}: a reading of its supply is missing or not above zero.',
    remedy: 'Measure it at the tool while it runs.',
  },
  'supply-weak': {
    says: 'Tool {serial}: {what} is there; {wanted} is wanted.',
    remedy: 'Shorter and thicker lead or hose, another socket, or a larger source.',
  },
  'supply-unprotected': {
    says: 'Tool {serial}: no residual-current device.',
    remedy: 'Put one between socket and tool before it is plugged in.',
  },
  'supply-dry-air': { says: 'Tool {serial}: its air carries no oil.', remedy: 'Fill the oiler: a dry motor loses torque.' },
  'supply-hose-changed': {
    says: 'Tool {serial}: its hose has another length than at its calibration.',
    remedy: 'Check the tool with this hose before the first bolt.',
  },
  'supply-hose': {
    says: 'Tool {serial}: hoses are rated for {rating} bar; {wanted} bar may reach them.',
    remedy: 'Take hoses and couplings of the pump’s rating; look for cuts and kinks.',
  },
  'valve-impossible': { says: 'Valve {tag}: a dimension, a factor or a load is not above zero.', remedy: 'Read its data sheet again.' },
  'valve-limit-missing': {
    says: 'Valve {tag}: the owner’s greatest stem torque is not entered.',
    remedy: 'Get it in writing; until then by hand.',
  },
  'valve-permission-missing': {
    says: 'Valve {tag}: nobody of operations has permitted to move it.',
    remedy: 'Enter who did, and for when.',
  },
  'valve-direction-missing': { says: 'Valve {tag}: which way it opens is not entered.', remedy: 'Look at the wheel: some open clockwise.' },
  'valve-thermal-binding': {
    says: 'Valve {tag} was shut at another temperature: the gate may be bound.',
    remedy: 'Do not force it. Ask operations; let temperatures even out.',
  },
  'valve-needs-more': {
    says: 'Valve {tag} needs {needed}; the owner allows {limit}.',
    remedy: 'Ask operations to take the pressure off, or free packing and stem.',
  },
  'valve-may-need-more': {
    says: 'Valve {tag} may need {needed}; the owner allows {limit}.',
    remedy: 'If it does not move at the limit, stop and report. The setting is not raised.',
  },
  'valve-stem-yields': {
    says: 'Valve {tag}: at the owner’s limit its stem stands at {found}; it yields at {allowed}.',
    remedy: 'Ask the owner for a limit that the stem stands.',
  },
  'valve-long-unmoved': {
    says: 'Valve {tag} has not been moved for years.',
    remedy: 'Exercise it gently, a few turns to and fro, by hand or at the lowest setting.',
  },
  'valve-turns-differ': {
    says: 'Valve {tag}: {turns} turns by stroke and lead; a waterworks valve of its size makes {low} to {high}.',
    remedy: 'Starts or stroke may be wrong. Count the turns by hand before a tool is put on.',
  },
  'valve-few-turns': {
    says: 'Valve {tag} makes {turns} turns: both ends belong to the hand, and nothing is left for a tool.',
    remedy: 'Turn it by hand.',
  },
  'valve-by-hand': { says: 'Valve {tag}: no setting lies below {limit}.', remedy: 'Turn it by hand.' },
} satisfies NoticeTexts<'supply'>;
