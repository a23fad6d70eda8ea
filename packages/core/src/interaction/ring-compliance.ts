import { ProfileMatrix } from './profile-matrix.ts';
import { type RingMatrices, ringMatrices, smearedHoles } from './ring-matrices.ts';
import { type Layer, meshRing, type RingMesh } from './ring-mesh.ts';
import { splineOverWaves, wavesToCompute } from './smooth-waves.ts';
import { angularWeight, radialPoints, type WasherArea } from './washer-load.ts';

/** A bolted ring of two mirrored halves: the half section in layers from the joint plane outwards, mm and MPa. */
export interface RingSection {
  readonly boltCount: number;
  /** radius of the bolt circle */
  readonly circle: number;
  readonly holeDiameter: number;
  readonly washerDiameter: number;
  readonly layers: readonly Layer[];
  /** index of the layer whose outer face the washers press on */
  readonly loaded: number;
  /** a gasket or sheet between the halves, or metal on metal */
  readonly contact: 'gasket' | 'metal';
}

/**
 * Local give of the plate round a hole that smearing misses, for the pair: k/(E·d_hole). Mean of the finite-element rings with gasket,
 * and of the two towers; single cases 0.70–1.06 and 0.13–0.20. Source: reference/interaction/README.md; nothing else is fitted.
 */
const HOLE_TERM = { gasket: 0.91, metal: 0.17 } as const;
/** Computed waves between the sixth and the last. */
const WAVES = 14;
/** Radial points for each part of the washer's width. */
const POINTS = 24;

/**
 * Row of the circulant compliance of the clamped assembly: closing at a bolt k positions away per unit bolt force, mm/N, both halves.
 *
 *     row_k = 2·Σ_n g_n·cos(2π·n·k/N) (+ k/(E·d_h) at k = 0)      g_n = f_nᵀ·K_n⁻¹·f_n
 *
 * Valid for: linear, bonded, gap-free joint; the bolt is a spring. Against finite elements with the bolt as a spring up to 3.3 % of target;
 * a solid bolt with its head differs from that truth by 5 to 7 % in soft joints. Source: semi-analytical finite elements, see reference/interaction.
 */
export function ringCompliance(section: RingSection): Float64Array {
  const { boltCount, circle, layers, loaded } = section;
  const area: WasherArea = { circle, hole: section.holeDiameter / 2, washer: section.washerDiameter / 2 };
  const radii = [circle - area.washer, circle - area.hole, circle, circle + area.hole, circle + area.washer];
  const mesh = meshRing(
    layers,
    radii,
    Math.max(area.washer, (Math.max(...layers.map(({ outer }) => outer)) - Math.min(...layers.map(({ inner }) => inner))) / 9),
  );
  const matrices = ringMatrices(mesh, layers, smearedHoles(boltCount, circle, area.hole));
  const top = layers.slice(0, loaded + 1).reduce((sum, { thickness }) => sum + thickness, 0);
  const load = loadPoints(mesh, top, area);
  const last = Math.ceil(Math.max(3 * boltCount, (6 * circle) / area.washer));
  const waves = wavesToCompute(last, WAVES);
  const response = (n: number) => waveResponse(mesh, matrices, load, area, n);
  const smooth = splineOverWaves(waves, waves.map(response));
  const row = new Float64Array(boltCount);
  const zero = response(0);
  const g = Float64Array.from({ length: last + 1 }, (_, n) => (n === 0 ? zero : smooth(n)));
  for (let k = 0; k < boltCount; k += 1) {
    let sum = 0;
    for (let n = 0; n <= last; n += 1) sum += g[n]! * Math.cos((2 * Math.PI * n * k) / boltCount);
    row[k] = 2 * sum;
  }
  row[0]! += HOLE_TERM[section.contact] / (layers[loaded]!.modulus * section.holeDiameter);
  return row;
}

/** The washer's pressure as weights on u_z of the nodes of the loaded face, before the angular weight of a wave. */
interface LoadPoint {
  readonly radius: number;
  /** r·dr/area */
  readonly weight: number;
  readonly nodes: readonly [number, number, number];
  readonly shape: readonly [number, number, number];
}

function loadPoints(mesh: RingMesh, top: number, area: WasherArea): LoadPoint[] {
  const edges = mesh.elements
    .filter((element) => Math.abs(mesh.z[element[2]!]! - top) < 1e-6)
    .map((element) => ({ from: mesh.r[element[3]!]!, to: mesh.r[element[2]!]!, nodes: [element[3]!, element[6]!, element[2]!] as const }));
  const surface = Math.PI * (area.washer ** 2 - area.hole ** 2);
  return radialPoints(area, POINTS).flatMap(({ radius, width }): LoadPoint[] => {
    const edge = edges.find(({ from, to }) => radius >= from && radius <= to);
    if (!edge) return [];
    const s = (2 * (radius - edge.from)) / (edge.to - edge.from) - 1;
    return [{ radius, weight: (radius * width) / surface, nodes: edge.nodes, shape: [(s * (s - 1)) / 2, 1 - s * s, (s * (s + 1)) / 2] }];
  });
}

/** g_n = f_nᵀ·K_n⁻¹·f_n. u_z is held on the joint plane; wave 0 has no u_θ, wave 1 moves sideways unless one u_r is held. */
function waveResponse(mesh: RingMesh, matrices: RingMatrices, load: readonly LoadPoint[], area: WasherArea, n: number): number {
  const size = 3 * mesh.r.length;
  const stiffness = new ProfileMatrix(matrices.constant.first);
  const { values } = stiffness;
  const factor = n === 0 ? 2 * Math.PI : Math.PI;
  const [constant, linear, square] = [matrices.constant.values, matrices.linear.values, matrices.square.values];
  for (let i = 0; i < values.length; i += 1) values[i] = factor * (constant[i]! + n * linear[i]! + n * n * square[i]!);
  const held = new Uint8Array(size);
  for (let node = 0; node < mesh.r.length; node += 1) {
    if (mesh.z[node]! < 1e-9) held[3 * node + 2] = 1;
    if (n === 0) held[3 * node + 1] = 1;
  }
  if (n === 1) held[0] = 1;
  hold(stiffness, held);
  const force = new Float64Array(size);
  for (const { radius, weight, nodes, shape } of load) {
    const amount = weight * angularWeight(area, n, radius);
    for (let i = 0; i < 3; i += 1) force[3 * nodes[i]! + 2]! += amount * shape[i]!;
  }
  if (!stiffness.factorise()) throw new Error(`the section has no stiffness against wave ${n}`);
  stiffness.forward(force);
  let sum = 0;
  for (const value of force) sum += value * value;
  return sum;
}

/** Fixes unknowns at zero: their rows and columns become those of the unit matrix. */
function hold(matrix: ProfileMatrix, held: Uint8Array): void {
  for (let i = 0; i < matrix.size; i += 1) {
    const row = matrix.start[i]! - matrix.first[i]!;
    for (let j = matrix.first[i]!; j <= i; j += 1) {
      if (held[i] || held[j]) matrix.values[row + j] = i === j ? 1 : 0;
    }
  }
}
