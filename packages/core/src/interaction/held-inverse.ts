import type { JointCompliance } from './joint-compliance.ts';

/**
 * G = A⁻¹ over the bolts that carry; rows and columns of all others are zero. A bolt joins or leaves by a rank-one update, so that
 * forces F = G·b and the answer of the joint to one nut, a column of G, cost no factorisation.
 */
export class HeldInverse {
  readonly values: Float64Array;
  readonly carries: Uint8Array;
  private readonly column: Float64Array;

  constructor(private readonly compliance: JointCompliance) {
    this.values = new Float64Array(compliance.size ** 2);
    this.carries = new Uint8Array(compliance.size);
    this.column = new Float64Array(compliance.size);
  }

  /** A bolt begins to carry; `extra`: added to its own compliance, mm/N. */
  join(bolt: number, extra: number): void {
    const { size, matrix } = this.compliance;
    const { values, column, carries } = this;
    const row = bolt * size;
    let own = matrix[row + bolt]! + extra;
    for (let i = 0, at = 0; i < size; i += 1, at += size) {
      let sum = 0;
      if (carries[i]) for (let k = 0; k < size; k += 1) sum += values[at + k]! * matrix[row + k]!;
      column[i] = sum;
      own -= sum * matrix[row + i]!;
    }
    column[bolt] = -1;
    this.carries[bolt] = 1;
    this.add(column, 1 / own);
  }

  /** A bolt has gone slack. */
  leave(bolt: number): void {
    const { size } = this.compliance;
    this.copyColumn(bolt);
    this.add(this.column, -1 / this.column[bolt]!);
    for (let i = 0; i < size; i += 1) {
      this.values[i * size + bolt] = 0;
      this.values[bolt * size + i] = 0;
    }
    this.carries[bolt] = 0;
  }

  /** The own compliance of a bolt that carries changes, mm/N. */
  soften(bolt: number, change: number): void {
    this.copyColumn(bolt);
    this.add(this.column, -change / (1 + change * this.column[bolt]!));
  }

  /** F = G·b into `force`. */
  solve(right: Float64Array, force: Float64Array): void {
    const { size } = this.compliance;
    const { values, carries } = this;
    for (let i = 0, at = 0; i < size; i += 1, at += size) {
      let sum = 0;
      if (carries[i]) for (let k = 0; k < size; k += 1) sum += values[at + k]! * right[k]!;
      force[i] = sum;
    }
  }

  private copyColumn(bolt: number): void {
    const { size } = this.compliance;
    for (let i = 0; i < size; i += 1) this.column[i] = this.values[bolt * size + i]!;
  }

  /** G += factor·v·vᵀ, v: a copy, zero where nothing carries. */
  private add(v: Float64Array, factor: number): void {
    const { size } = this.compliance;
    const { values } = this;
    for (let i = 0, at = 0; i < size; i += 1, at += size) {
      const own = factor * v[i]!;
      if (own === 0) continue;
      for (let k = 0; k < size; k += 1) values[at + k]! += own * v[k]!;
    }
  }
}
