import { writeFileSync } from 'node:fs';
import encode from 'qr';

/**
 * A film of one still square, as a camera held over a tag sees it: YUV4MPEG2, which Chromium takes in place of a camera.
 * `comesAfter`: so many tenths of a second in which only its edge is in the picture.
 */
export function squareVideo(file: string, text: string, { comesAfter = 0 } = {}): void {
  writeFileSync(
    file,
    Buffer.concat([
      Buffer.from(`YUV4MPEG2 W${WIDTH} H${HEIGHT} F10:1 Ip A1:1 C420jpeg\n`),
      ...Array<Buffer>(comesAfter).fill(frame(text, 420)),
      ...Array<Buffer>(10 + comesAfter).fill(frame(text, 120)),
    ]),
  );
}
const [WIDTH, HEIGHT, SIDE] = [640, 480, 400];

function frame(text: string, left: number): Buffer {
  const modules = encode(text, 'raw');
  const luma = Buffer.alloc(WIDTH * HEIGHT, 235);
  for (let y = 0; y < SIDE; y += 1)
    for (let x = 0; x < Math.min(SIDE, WIDTH - left); x += 1) {
      const row = modules[Math.floor((y * modules.length) / SIDE)]!;
      if (row[Math.floor((x * row.length) / SIDE)]) luma[(y + 40) * WIDTH + x + left] = 16;
    }
  return Buffer.concat([Buffer.from('FRAME\n'), luma, Buffer.alloc((WIDTH * HEIGHT) / 2, 128)]);
}
