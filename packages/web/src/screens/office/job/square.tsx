import encodeQR from 'qr';

/** A QR code (ISO/IEC 18004), dark on light in either theme: readers want it so. */
export function Square({ text }: { readonly text: string }) {
  const rows = encodeQR(text, 'raw', { border: 4 });
  const size = rows.length;
  const path = rows.flatMap((row, y) => row.flatMap((dark, x) => (dark ? [`M${x} ${y}h1v1h-1z`] : []))).join('');
  return (
    <svg viewBox={`0 0 ${size} ${size}`} role="img" aria-label={text} style={{ width: '16rem', maxWidth: '100%' }}>
      <rect width={size} height={size} fill="#fff" />
      <path d={path} fill="#000" />
    </svg>
  );
}
