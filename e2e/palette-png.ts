import { crc32, deflateSync } from 'node:zlib';
import { PNG } from 'pngjs';

/** The same picture with at most 256 colours, which is all that a page of text needs: a third of the size. */
export function palettePng(bytes: Uint8Array): Uint8Array {
  const { width, height, data } = PNG.sync.read(Buffer.from(bytes));
  const { palette, nearest } = paletteOf(data);
  const lines = Buffer.alloc(height * (width + 1));
  for (let y = 0; y < height; y += 1)
    for (let x = 0; x < width; x += 1) lines[y * (width + 1) + 1 + x] = nearest(data.readUIntBE(4 * (y * width + x), 3));
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  // eight bits a pixel, by palette
  header.set([8, 3, 0, 0, 0], 8);
  const colours = Buffer.from(palette.flatMap((one) => [one >> 16, (one >> 8) & 255, one & 255]));
  return Buffer.concat([
    Buffer.from([137, 80, 78, 71, 13, 10, 26, 10]),
    chunk('IHDR', header),
    chunk('PLTE', colours),
    chunk('IDAT', deflateSync(lines, { level: 9 })),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

/** The colours seen most, and for each other the nearest of them. */
function paletteOf(data: Buffer): { readonly palette: readonly number[]; readonly nearest: (colour: number) => number } {
  const counts = new Map<number, number>();
  for (let at = 0; at < data.length; at += 4) {
    const colour = data.readUIntBE(at, 3);
    counts.set(colour, (counts.get(colour) ?? 0) + 1);
  }
  const palette = [...counts]
    .sort((a, b) => b[1] - a[1])
    .slice(0, 256)
    .map(([colour]) => colour);
  const known = new Map(palette.map((colour, at) => [colour, at]));
  const nearest = (colour: number): number => {
    const found = known.get(colour);
    if (found !== undefined) return found;
    let best = 0;
    for (let at = 1; at < palette.length; at += 1) if (far(palette[at]!, colour) < far(palette[best]!, colour)) best = at;
    known.set(colour, best);
    return best;
  };
  return { palette, nearest };
}

const far = (a: number, b: number): number => {
  const [red, green, blue] = [(a >> 16) - (b >> 16), ((a >> 8) & 255) - ((b >> 8) & 255), (a & 255) - (b & 255)];
  return red * red + green * green + blue * blue;
};

function chunk(name: string, body: Uint8Array): Buffer {
  const told = Buffer.concat([Buffer.from(name, 'latin1'), body]);
  const framed = Buffer.alloc(told.length + 8);
  framed.writeUInt32BE(body.length, 0);
  framed.set(told, 4);
  framed.writeUInt32BE(crc32(told), told.length + 4);
  return framed;
}
