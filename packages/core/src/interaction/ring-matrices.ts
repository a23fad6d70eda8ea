import { ProfileMatrix } from './profile-matrix.ts';
import { GAUSS } from './quadratic-element.ts';
import type { Layer, RingMesh } from './ring-mesh.ts';

/** Stiffness of the section for circumferential wave n: K_n = c_n·(K₀ + n·K₁ + n²·K₂); unknowns u_r, u_θ, u_z at each node. */
export interface RingMatrices {
  readonly constant: ProfileMatrix;
  readonly linear: ProfileMatrix;
  readonly square: ProfileMatrix;
}

/** What is left of the modulus at a radius: 1 − N·a(r)/π inside the band of the holes, a half the angle a hole takes there. */
export const smearedHoles = (count: number, circle: number, hole: number) => (radius: number) => {
  const cosine = (radius ** 2 + circle ** 2 - hole ** 2) / (2 * radius * circle);
  return cosine >= 1 ? 1 : 1 - (count * Math.acos(Math.max(-1, cosine))) / Math.PI;
};

/**
 * Assembles the three matrices. Strains of a wave u_r, u_z ~ cos nθ, u_θ ~ sin nθ:
 *
 *     ε_r = u,r   ε_z = w,z   ε_θ = (u + n·v)/r   γ_rz = u,z + w,r   γ_rθ = v,r − v/r − n·u/r   γ_zθ = v,z − n·w/r
 *
 * Source: textbook (semi-analytical finite elements of solids of revolution); eight-node elements, 2 × 2 Gauss points.
 */
export function ringMatrices(mesh: RingMesh, layers: readonly Layer[], left: (radius: number) => number): RingMatrices {
  const first = profileOf(mesh);
  const matrices = {
    constant: new ProfileMatrix(first),
    linear: new ProfileMatrix(first.slice()),
    square: new ProfileMatrix(first.slice()),
  };
  const b0 = new Float64Array(6 * 24);
  const b1 = new Float64Array(6 * 24);
  const d0 = new Float64Array(6 * 24);
  const d1 = new Float64Array(6 * 24);
  for (const [at, element] of mesh.elements.entries()) {
    const layer = layers[mesh.layerOf[at]!]!;
    for (const shape of GAUSS) {
      b0.fill(0);
      b1.fill(0);
      const [r0, r1] = [mesh.r[element[0]!]!, mesh.r[element[1]!]!];
      const [z0, z1] = [mesh.z[element[0]!]!, mesh.z[element[2]!]!];
      let radius = 0;
      for (let a = 0; a < 8; a += 1) radius += shape.value[a]! * mesh.r[element[a]!]!;
      const [scaleR, scaleZ] = [2 / (r1 - r0), 2 / (z1 - z0)];
      for (let a = 0; a < 8; a += 1) {
        const value = shape.value[a]! / radius;
        const byR = shape.byXi[a]! * scaleR;
        const byZ = shape.byEta[a]! * scaleZ;
        const [u, v, w] = [3 * a, 3 * a + 1, 3 * a + 2];
        b0[u] = byR;
        b0[24 + w] = byZ;
        b0[48 + u] = value;
        b1[48 + v] = value;
        b0[72 + u] = byZ;
        b0[72 + w] = byR;
        b0[96 + v] = byR - value;
        b1[96 + u] = -value;
        b0[120 + v] = byZ;
        b1[120 + w] = -value;
      }
      const modulus = layer.pierced ? layer.modulus * left(radius) : layer.modulus;
      const weight = radius / (scaleR * scaleZ);
      elasticity(modulus, layer.poisson, weight, b0, d0);
      elasticity(modulus, layer.poisson, weight, b1, d1);
      scatter(matrices, element, b0, b1, d0, d1);
    }
  }
  return matrices;
}

/** D·B times a weight, strains in the order r, z, θ, rz, rθ, zθ. */
function elasticity(modulus: number, nu: number, weight: number, b: Float64Array, out: Float64Array): void {
  const factor = (weight * modulus) / ((1 + nu) * (1 - 2 * nu));
  const shear = (weight * modulus) / (2 * (1 + nu));
  for (let i = 0; i < 24; i += 1) {
    const [er, ez, et] = [b[i]!, b[24 + i]!, b[48 + i]!];
    const trace = nu * (er + ez + et);
    out[i] = factor * ((1 - 2 * nu) * er + trace);
    out[24 + i] = factor * ((1 - 2 * nu) * ez + trace);
    out[48 + i] = factor * ((1 - 2 * nu) * et + trace);
    out[72 + i] = shear * b[72 + i]!;
    out[96 + i] = shear * b[96 + i]!;
    out[120 + i] = shear * b[120 + i]!;
  }
}

function scatter(to: RingMatrices, element: Int32Array, b0: Float64Array, b1: Float64Array, d0: Float64Array, d1: Float64Array): void {
  for (let i = 0; i < 24; i += 1) {
    const row = 3 * element[Math.floor(i / 3)]! + (i % 3);
    for (let j = 0; j <= i; j += 1) {
      const column = 3 * element[Math.floor(j / 3)]! + (j % 3);
      let [constant, linear, square] = [0, 0, 0];
      for (let s = 0; s < 144; s += 24) {
        constant += b0[s + i]! * d0[s + j]!;
        linear += b0[s + i]! * d1[s + j]! + b1[s + i]! * d0[s + j]!;
        square += b1[s + i]! * d1[s + j]!;
      }
      to.constant.add(row, column, constant);
      to.linear.add(row, column, linear);
      to.square.add(row, column, square);
    }
  }
}

/** First column of each row: the lowest unknown that shares an element with it. */
function profileOf({ r, elements }: RingMesh): Int32Array {
  const lowest = Int32Array.from(r, (_, i) => i);
  for (const element of elements) {
    const least = Math.min(...element);
    for (const node of element) lowest[node] = Math.min(lowest[node]!, least);
  }
  return Int32Array.from({ length: 3 * r.length }, (_, i) => 3 * lowest[Math.floor(i / 3)]!);
}
