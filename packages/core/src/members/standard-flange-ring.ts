import { inchSize } from '../fasteners/inch-size.ts';
import { b165Flange } from '../flanges/b16.5.ts';
import { b1647Flange } from '../flanges/b16.47.ts';
import { en1092Flange } from '../flanges/en1092-1.ts';
import { notice } from '../notice/index.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import { type Millimetre, mm } from '../quantity.ts';
import { dnPipe, npsPipe, type Pipe } from './pipe.ts';

/** A weld-neck flange as the ring it is to its bolts; diameters. */
export interface FlangeRing {
  readonly inner: Millimetre;
  readonly outer: Millimetre;
  readonly thickness: Millimetre;
  readonly face: { readonly outer: Millimetre; readonly height: Millimetre };
  readonly hub: { readonly outer: Millimetre; readonly length: Millimetre };
  readonly wall: Millimetre;
  readonly circle: Millimetre;
  readonly bolts: number;
  readonly hole: Millimetre;
}

/** `B16.5 NPS 8 Class 300`, `B16.47A NPS 30 Class 150`, `EN 1092-1 DN80 PN16`: the names that plans write. */
const CLASS = /^B16\.(5|47A) NPS (.+) Class (\d+)$/;
const PN = /^EN 1092-1 DN(\d+) PN(\d+)$/;

/**
 * Dimensions of a standard weld-neck flange, as the interaction model needs them: size and class are all that is asked for.
 *
 * Flange, face and bolting from its table; pipe from its standard. The hub is not in our tables: a cylinder of its mean diameter,
 * pipe + 0.5·t at the half of a taper that begins at pipe + 1.0·t, over 1.8·t (own estimate: B16.5 hubs lie at 0.97–1.35·t, PN 16 hubs
 * at 0.66–1.2·t, from memory). The raised face of a PN flange: bolt circle less hole less 5 mm (own estimate), 2 mm high.
 */
export function standardFlangeRing(name: string): Outcome<FlangeRing> {
  const inchName = CLASS.exec(name);
  if (inchName) {
    const [, standard, nps, rating] = inchName;
    const found = standard === '5' ? b165Flange(nps!, Number(rating)) : b1647Flange(nps!, Number(rating));
    const pipe = npsPipe(inchSize(nps!) === undefined ? 0 : inchSize(nps!)!);
    if (!found.ok) return found;
    const { value } = found;
    return ring(name, value, { outer: value.raisedFace, height: value.raisedFaceHeight }, pipe);
  }
  const metric = PN.exec(name);
  if (!metric) return refused(notice('flange-unreadable', {}));
  const found = en1092Flange(Number(metric[1]), Number(metric[2]));
  if (!found.ok) return found;
  const { value } = found;
  const face = { outer: mm(value.boltCircle - value.hole - 5), height: mm(2) };
  // printed thickness includes the raised face
  return ring(name, { ...value, thickness: mm(value.thickness - face.height) }, face, dnPipe(value.dn));
}

interface TableFlange {
  readonly outsideDiameter: Millimetre;
  readonly thickness: Millimetre;
  readonly boltCircle: Millimetre;
  readonly bolts: number;
  readonly hole: Millimetre;
}

function ring(name: string, flange: TableFlange, face: FlangeRing['face'], pipe: Pipe | undefined): Outcome<FlangeRing> {
  if (!pipe) return refused(notice('members-unknown', { what: `the pipe of ${name}` }));
  const { thickness } = flange;
  return done({
    inner: mm(pipe.outside - 2 * pipe.wall),
    outer: flange.outsideDiameter,
    thickness,
    face,
    hub: { outer: mm(pipe.outside + 0.5 * thickness), length: mm(1.8 * thickness) },
    wall: pipe.wall,
    circle: flange.boltCircle,
    bolts: flange.bolts,
    hole: flange.hole,
  });
}
