import { type Shape, shapeAt } from './quadratic-element.ts';

/** A regular grid of eight-node squares over a rectangular plate centred on the origin. */
export interface PlateMesh {
  readonly width: number;
  readonly height: number;
  readonly elementWidth: number;
  readonly elementHeight: number;
  readonly across: number;
  readonly up: number;
  readonly nodeCount: number;
  /** eight nodes of each element, element (i, j) at j·across + i */
  readonly elements: readonly Int32Array[];
}

/** Nodes run row by row: corner rows have 2·across + 1 of them, the rows between across + 1. */
export function meshPlate(width: number, height: number, size: number): PlateMesh {
  const across = Math.max(2, Math.round(width / size));
  const up = Math.max(2, Math.round(height / size));
  const full = 2 * across + 1;
  const pair = full + across + 1;
  const corner = (i: number, j: number) => j * pair + 2 * i;
  const side = (i: number, j: number) => j * pair + full + i;
  const elements = Array.from({ length: across * up }, (_, at) => {
    const [i, j] = [at % across, Math.floor(at / across)];
    return Int32Array.of(
      corner(i, j),
      corner(i + 1, j),
      corner(i + 1, j + 1),
      corner(i, j + 1),
      corner(i, j) + 1,
      side(i + 1, j),
      corner(i, j + 1) + 1,
      side(i, j),
    );
  });
  return { width, height, elementWidth: width / across, elementHeight: height / up, across, up, nodeCount: up * pair + full, elements };
}

/** The element a point lies in and the shape functions there; nothing outside the plate. */
export function locate(mesh: PlateMesh, x: number, y: number): { readonly nodes: Int32Array; readonly shape: Shape } | undefined {
  const u = (x + mesh.width / 2) / mesh.elementWidth;
  const v = (y + mesh.height / 2) / mesh.elementHeight;
  if (u < 0 || v < 0 || u > mesh.across || v > mesh.up) return undefined;
  const i = Math.min(mesh.across - 1, Math.floor(u));
  const j = Math.min(mesh.up - 1, Math.floor(v));
  return { nodes: mesh.elements[j * mesh.across + i]!, shape: shapeAt(2 * (u - i) - 1, 2 * (v - j) - 1) };
}
