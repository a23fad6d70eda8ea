/** Texts in and about the drawing of a joint; ICU message format. */
export const DRAWING_TEXTS = {
  'drawing.title': 'Joint {tag}, {bolts, plural, one {# bolt} other {# bolts}}: positions and tightening turns',
  'drawing.seen': 'Seen from {from}',
  'drawing.bolt-one': 'bolt 1',
  'drawing.numbers-run': 'numbers run this way',
  'drawing.no-datum': 'No datum given: mark bolt 1 on the steel first.',
  'drawing.position': 'in the hexagon: bolt number',
  'drawing.position-inside': 'beside the hexagon, inside: bolt number',
  'drawing.position-some': 'inside the ring: bolt number, not all are written',
  'drawing.turn': 'black box {where, select, ring {outside} other {above}} it: its turn (here the third)',
  'drawing.turn-some':
    'black box {where, select, ring {outside} other {above}} it: its turn; first {shown} of {all} are drawn, the list has all',
  'drawing.to-scale': 'To scale.',
  'drawing.not-to-scale': 'Bolts not to scale.',
} as const;
