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
  'supply-weak': {
    says: 'Tool {serial}: {what} is there; {wanted} is wanted.',
    remedy: 'Shorter and thicker lead or hose, another socket, or a larger source.',
  },
  'supply-unprotected': {
    says: 'Tool {serial}: no residual-current device.',
    remedy: 'Put one between socket and tool before it is plugged in.',
  },
  'supply-dry-air': { says: 'Tool {serial}: its air carries no oil.', remedy: 'Fill the oiler: a dry motor loses torque.' },
  'supply-hose': {
    says: 'Tool {serial}: hoses are rated for {rating} bar; the setting needs {wanted} bar.',
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
  'valve-by-hand': { says: 'Valve {tag}: no setting lies below {limit}.', remedy: 'Turn it by hand.' },
} satisfies NoticeTexts<'supply'>;
