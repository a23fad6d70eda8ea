import encodeQR from 'qr';
import type { At } from '../drawing/index.ts';
import type { Canvas } from './canvas.ts';

/** Light room about a code, modules: four, as ISO/IEC 18004 wants it. */
const QUIET = 4;

/** A QR code with its quiet zone in a square of `size` mm. Dark runs are drawn as one box, so that no printer leaves hairlines. */
export function drawQr(canvas: Canvas, text: string, at: At, size: number): void {
  const rows = encodeQR(text, 'raw', { ecc: 'medium', border: QUIET });
  const module = size / rows.length;
  canvas.box(at, size, size, { fill: 'paper' });
  for (const [y, row] of rows.entries()) {
    for (let x = 0; x < row.length; x += 1) {
      if (!row[x]) continue;
      let end = x;
      while (row[end]) end += 1;
      canvas.box({ x: at.x + x * module, y: at.y + y * module }, (end - x) * module, module * 1.01, { fill: 'ink' });
      x = end;
    }
  }
}
