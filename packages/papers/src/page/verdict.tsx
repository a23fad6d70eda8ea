import type { Verdict as VerdictName } from '@clampwright/core';
import { verdictText } from '@clampwright/words';

/** Square, triangle, ring: told apart without colour. */
const SIGN: Readonly<Record<VerdictName, string>> = {
  stop: 'M1 1H15V15H1Z',
  attention: 'M8 1.2L15.4 15H0.6Z',
  ready: 'M8 1A7 7 0 1 0 8 15A7 7 0 1 0 8 1ZM8 4.4A3.6 3.6 0 1 1 8 11.6A3.6 3.6 0 1 1 8 4.4Z',
};

export function Verdict({ verdict }: { readonly verdict: VerdictName }) {
  return (
    <span className={`verdict ${verdict}`}>
      <svg viewBox="0 0 16 16" aria-hidden="true">
        <path d={SIGN[verdict]} fillRule="evenodd" />
      </svg>
      {verdictText(verdict)}
    </span>
  );
}
