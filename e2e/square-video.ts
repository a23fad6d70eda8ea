import { writeFileSync } from 'node:fs';
import encode from 'qr';

/** A film of one still square, as a camera held over a tag sees it: YUV4MPEG2, which Chromium takes in place of a camera. */
export function squareVideo(file: string, text: string): void {
  const [width, height, side] = [640, 480, 400];
  const modules = encode(text, 'raw');
  const luma = Buffer.alloc(width * height, 235);
  for (let y = 0; y < side; y += 1)
    for (let x = 0; x < side; x += 1) {
      const row = modules[Math.floor((y * modules.length) / side)]!;
      if (row[Math.floor((x * row.length) / side)]) luma[(y + 40) * width + x + 120] = 16;
    }
  const frame = Buffer.concat([Buffer.from('FRAME\n'), luma, Buffer.alloc((width * height) / 2, 128)]);
  writeFileSync(
    file,
    Buffer.concat([Buffer.from(`YUV4MPEG2 W${width} H${height} F10:1 Ip A1:1 C420jpeg\n`), ...Array<Buffer>(10).fill(frame)]),
  );
}
