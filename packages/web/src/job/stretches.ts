/** `1–4, 7`: bolts in a row are one stretch. */
export function stretches(bolts: readonly number[]): string {
  const parts: [number, number][] = [];
  for (const bolt of bolts) {
    const last = parts.at(-1);
    if (last && last[1] === bolt - 1) last[1] = bolt;
    else parts.push([bolt, bolt]);
  }
  return parts.map(([from, to]) => (from === to ? `${from}` : `${from}–${to}`)).join(', ');
}
