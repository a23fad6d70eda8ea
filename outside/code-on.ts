import jsQR from 'jsqr';
import { PNG } from 'pngjs';

// the package is CommonJS: what Node imports of it wraps what it exports
const decode = (jsQR as unknown as { readonly default?: typeof jsQR }).default ?? jsQR;

/** What a QR reader finds on a picture; undefined where there is no code. */
export function codeOn(png: Buffer): string | undefined {
  const { data, width, height } = PNG.sync.read(png);
  return decode(new Uint8ClampedArray(data), width, height)?.data;
}
