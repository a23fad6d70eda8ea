import { crc32, deflateSync } from 'node:zlib';
import { PNG } from 'pngjs';

/** The same picture with few colours, four bits a pixel: a page of text and plain areas needs no more, and takes a fifth of the room. */
export function palettePng(bytes: Uint8Array): Uint8Array {
  const { width, height, data } = PNG.sync.read(Buffer.from(bytes));
  const { palette, nearest } = paletteOf(data);
  const row = 1 + Math.ceil(width / 2);
  const lines = Buffer.alloc(height * row);
  for (let y = 0; y < height; y += 1)
    for (let x = 0; x < width; x += 1) {
      const at = y * row + 1 + (x >> 1);
      lines[at] = lines[at]! | (nearest(data.readUIntBE(4 * (y * width + x), 3)) << (x & 1 ? 0 : 4));
    }
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header.set([4, 3, 0, 0, 0], 8);
  const colours = Buffer.from(palette.flatMap((one) => [one >> 16, (one >> 8) & 255, one & 255]));
  return Buffer.concat([
    Buffer.from([137, 80, 78, 71, 13, 10, 26, 10]),
    chunk('IHDR', header),
    chunk('PLTE', colours),
    chunk('IDAT', deflateSync(lines, { level: 9, memLevel: 9 })),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

const COLOURS = 16;
/** Colours nearer than this to one that is kept are shown as it. */
const NEAR = 48;

/** The colours seen most that are not much alike, and for each other the nearest of them. */
function paletteOf(data: Buffer): { readonly palette: readonly number[]; readonly nearest: (colour: number) => number } {
  const counts = new Map<number, number>();
  for (let at = 0; at < data.length; at += 4) {
    const colour = data.readUIntBE(at, 3);
    counts.set(colour, (counts.get(colour) ?? 0) + 1);
  }
  const seen = [...counts].sort((a, b) => b[1] - a[1]).map(([colour]) => colour);
  // grounds differ by little: those that fill much of the page are kept in any case
  const palette = seen.filter((one) => counts.get(one)! > data.length / 400).slice(0, COLOURS);
  for (const one of seen) if (palette.length < COLOURS && palette.every((kept) => far(kept, one) > NEAR)) palette.push(one);
  const known = new Map<number, number>();
  const nearest = (colour: number): number => {
    const found = known.get(colour);
    if (found !== undefined) return found;
    const distance = palette.map((one) => far(one, colour));
    const best = distance.indexOf(Math.min(...distance));
    known.set(colour, best);
    return best;
  };
  return { palette, nearest };
}

const far = (a: number, b: number): number =>
  Math.abs((a >> 16) - (b >> 16)) + Math.abs(((a >> 8) & 255) - ((b >> 8) & 255)) + Math.abs((a & 255) - (b & 255));

function chunk(name: string, body: Uint8Array): Buffer {
  const told = Buffer.concat([Buffer.from(name, 'latin1'), body]);
  const framed = Buffer.alloc(told.length + 8);
  framed.writeUInt32BE(body.length, 0);
  framed.set(told, 4);
  framed.writeUInt32BE(crc32(told), told.length + 4);
  return framed;
}
