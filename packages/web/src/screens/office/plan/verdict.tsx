import type { Verdict as VerdictName } from '@clampwright/core';
import { useOffice } from '../../../language/office-speech.tsx';
import css from './verdict.module.css';

const SIGN: Readonly<Record<VerdictName, string>> = { ready: '●', attention: '▲', stop: '■' };

/** A verdict by shape, word and colour: told apart in black and white as well. */
export function Verdict({ verdict }: { readonly verdict: VerdictName }) {
  const say = useOffice();
  return (
    <span className={css.verdict} data-verdict={verdict}>
      <span aria-hidden="true">{SIGN[verdict]}</span> {say(`sheet.is-${verdict}`)}
    </span>
  );
}
