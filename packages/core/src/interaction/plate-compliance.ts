import { locate, meshPlate, type PlateMesh } from './plate-mesh.ts';
import { ProfileMatrix } from './profile-matrix.ts';
import { GAUSS } from './quadratic-element.ts';

/** A plate that bolts press on a bed: one half of a splice, or a base plate on its bedding. mm and MPa. */
export interface PlateGroup {
  readonly width: number;
  readonly height: number;
  readonly thickness: number;
  readonly modulus: number;
  readonly poisson: number;
  /** thickness and modulus of what lies between plate and mirror plane or ground */
  readonly bedThickness: number;
  readonly bedModulus: number;
  readonly bolts: readonly { readonly x: number; readonly y: number }[];
  readonly holeDiameter: number;
  readonly washerDiameter: number;
  /** two mirrored plates, or one on rigid ground */
  readonly support: 'mirrored' | 'ground';
  /** a column stub: a line that stays straight and plane, half sides of its rectangle */
  readonly stub?: { readonly halfWidth: number; readonly halfHeight: number };
}

/** Element size as a share of the washer's diameter. */
const ELEMENTS_PER_WASHER = 2.5;
const SHEAR_FACTOR = 5 / 6;
/** Spread of the force inside the outer half of the plate. */
const CONE = 0.5;
/** Local give round a hole of one bedded plate: half the term that the gasketed rings have for the pair. Source: reference/interaction/README.md. */
const HOLE_TERM = 0.91 / 2;

/**
 * Members' compliance of a bolt group: closing at bolt i per unit force in bolt j, mm/N.
 *
 * Mindlin plate of eight-node elements (2 × 2 points) on a Winkler bed of modulus 1/(t_bed/E_bed + t/(2·E)), washers as uniform pressure,
 * response as its weighted mean; on the diagonal the deformation cone of the outer half plate and half the hole term.
 *
 * Valid for: linear, bonded, gap-free joint; the bolt is a spring; a rectangular plate of one thickness. Within 2.6 % of target on the
 * finite-element plates. Source: textbook (Reissner–Mindlin plate, Winkler foundation); reference/interaction/README.md.
 */
export function plateCompliance(group: PlateGroup): Float64Array[] {
  const mesh = meshPlate(group.width, group.height, group.washerDiameter / ELEMENTS_PER_WASHER);
  const stiffness = assemble(group, mesh);
  if (!stiffness.factorise()) throw new Error('the plate has no stiffness');
  const loads = group.bolts.map((bolt) => washerLoad(group, mesh, bolt, stiffness.size));
  for (const load of loads) stiffness.forward(load);
  const plates = group.support === 'mirrored' ? 2 : 1;
  const own = plates * (coneResilience(group) + HOLE_TERM / (group.modulus * group.holeDiameter));
  return loads.map((a, i) => Float64Array.from(loads, (b, j) => plates * dot(a, b) + (i === j ? own : 0)));
}

/** Give of the outer half of the plate under the washer: a cone of slope 0.5 over t/2. */
function coneResilience({ thickness, modulus, holeDiameter: dh, washerDiameter: dw }: PlateGroup): number {
  const wide = dw + 2 * CONE * (thickness / 2);
  return Math.log(((dw + dh) * (wide - dh)) / ((dw - dh) * (wide + dh))) / (modulus * Math.PI * dh * CONE);
}

const dot = (a: Float64Array, b: Float64Array): number => {
  let sum = 0;
  for (let i = 0; i < a.length; i += 1) sum += a[i]! * b[i]!;
  return sum;
};

/** Unknowns w, β_x, β_y at each node, and the three of the stub's plane after them. */
function assemble(group: PlateGroup, mesh: PlateMesh): ProfileMatrix {
  const lowest = Int32Array.from({ length: mesh.nodeCount }, (_, i) => i);
  for (const element of mesh.elements) {
    const least = Math.min(...element);
    for (const node of element) lowest[node] = Math.min(lowest[node]!, least);
  }
  const plane = group.stub ? 3 : 0;
  const size = 3 * mesh.nodeCount;
  const matrix = new ProfileMatrix(Int32Array.from({ length: size + plane }, (_, i) => (i < size ? 3 * lowest[Math.floor(i / 3)]! : 0)));
  const element = elementMatrix(group, mesh);
  for (const nodes of mesh.elements) {
    for (let i = 0; i < 24; i += 1) {
      const row = 3 * nodes[Math.floor(i / 3)]! + (i % 3);
      for (let j = 0; j <= i; j += 1) matrix.add(row, 3 * nodes[Math.floor(j / 3)]! + (j % 3), element[24 * i + j]!);
    }
  }
  if (group.stub) tieStub(group.stub, group, mesh, matrix, size);
  return matrix;
}

/** All elements are alike: one matrix serves the plate. */
function elementMatrix(group: PlateGroup, { elementWidth, elementHeight }: PlateMesh): Float64Array {
  const { modulus, poisson: nu, thickness } = group;
  const bending = (modulus * thickness ** 3) / (12 * (1 - nu * nu));
  const shear = (SHEAR_FACTOR * modulus * thickness) / (2 * (1 + nu));
  const bed = 1 / (group.bedThickness / group.bedModulus + thickness / (2 * modulus));
  const out = new Float64Array(24 * 24);
  const area = (elementWidth * elementHeight) / 4;
  for (const shape of GAUSS) {
    const rows = {
      kx: new Float64Array(24),
      ky: new Float64Array(24),
      kxy: new Float64Array(24),
      gx: new Float64Array(24),
      gy: new Float64Array(24),
      w: new Float64Array(24),
    };
    for (let a = 0; a < 8; a += 1) {
      const [value, byX, byY] = [shape.value[a]!, (shape.byXi[a]! * 2) / elementWidth, (shape.byEta[a]! * 2) / elementHeight];
      rows.w[3 * a] = value;
      rows.kx[3 * a + 1] = byX;
      rows.ky[3 * a + 2] = byY;
      rows.kxy[3 * a + 1] = byY;
      rows.kxy[3 * a + 2] = byX;
      rows.gx[3 * a] = byX;
      rows.gx[3 * a + 1] = value;
      rows.gy[3 * a] = byY;
      rows.gy[3 * a + 2] = value;
    }
    for (let i = 0; i < 24; i += 1) {
      for (let j = 0; j < 24; j += 1) {
        const bend =
          rows.kx[i]! * (rows.kx[j]! + nu * rows.ky[j]!) +
          rows.ky[i]! * (rows.ky[j]! + nu * rows.kx[j]!) +
          ((1 - nu) / 2) * rows.kxy[i]! * rows.kxy[j]!;
        const slide = rows.gx[i]! * rows.gx[j]! + rows.gy[i]! * rows.gy[j]!;
        out[24 * i + j]! += area * (bending * bend + shear * slide + bed * rows.w[i]! * rows.w[j]!);
      }
    }
  }
  return out;
}

/** Points on each side of the stub's outline. */
const STUB_POINTS = 24;

/** Ties the plate along the stub's outline to a plane that is free to move: stiff springs, far stiffer than the plate between two points. */
function tieStub(
  { halfWidth, halfHeight }: NonNullable<PlateGroup['stub']>,
  group: PlateGroup,
  mesh: PlateMesh,
  matrix: ProfileMatrix,
  size: number,
): void {
  const spring = 100 * group.modulus * group.thickness;
  for (let k = 0; k < STUB_POINTS; k += 1) {
    const s = (2 * (k + 0.5)) / STUB_POINTS - 1;
    const outline = [
      [s * halfWidth, -halfHeight],
      [s * halfWidth, halfHeight],
      [-halfWidth, s * halfHeight],
      [halfWidth, s * halfHeight],
    ] as const;
    for (const [x, y] of outline) {
      const found = locate(mesh, x, y);
      if (!found) continue;
      const unknowns = [...found.nodes].map((node) => 3 * node).concat([size, size + 1, size + 2]);
      const weights = [...found.shape.value, -1, -x / group.width, -y / group.height];
      for (const [i, row] of unknowns.entries()) {
        for (let j = 0; j < unknowns.length; j += 1) {
          const column = unknowns[j]!;
          if (column <= row) matrix.add(row, column, spring * weights[i]! * weights[j]!);
        }
      }
    }
  }
}

const RINGS = 8;
const SPOKES = 48;

/** Unit force as uniform pressure on the washer's annulus, as weights on w of the nodes. */
function washerLoad(group: PlateGroup, mesh: PlateMesh, bolt: { readonly x: number; readonly y: number }, size: number): Float64Array {
  const load = new Float64Array(size);
  const [inner, outer] = [group.holeDiameter / 2, group.washerDiameter / 2];
  const points: { nodes: Int32Array; values: Float64Array; weight: number }[] = [];
  let whole = 0;
  for (let ring = 0; ring < RINGS; ring += 1) {
    const radius = inner + ((outer - inner) * (ring + 0.5)) / RINGS;
    for (let spoke = 0; spoke < SPOKES; spoke += 1) {
      const angle = (2 * Math.PI * (spoke + 0.5)) / SPOKES;
      const found = locate(mesh, bolt.x + radius * Math.cos(angle), bolt.y + radius * Math.sin(angle));
      if (!found) continue;
      points.push({ nodes: found.nodes, values: found.shape.value, weight: radius });
      whole += radius;
    }
  }
  for (const { nodes, values, weight } of points) for (let a = 0; a < 8; a += 1) load[3 * nodes[a]!]! += (weight / whole) * values[a]!;
  return load;
}
