import { useState } from 'react';
import { useSay } from '../language/speech.tsx';
import css from './hold-button.module.css';
import { HoldButton } from './hold-button.tsx';
import { Button, Row } from './page.tsx';

interface MainActionProps {
  readonly guard: 'hold' | 'second';
  readonly label: string;
  /** what the second person is asked */
  readonly which: string;
  /** goes off again only where this fails */
  readonly onDone: () => Promise<void>;
}

/** The one big action, guarded as the device is set: held for a moment, or confirmed by the second person. It goes off once. */
export function MainAction({ guard, label, which, onDone }: MainActionProps) {
  const say = useSay();
  const [asked, setAsked] = useState(false);
  const [gone, setGone] = useState(false);
  const go = () => {
    if (gone) return;
    setGone(true);
    onDone().catch(() => setGone(false));
  };
  if (guard === 'hold')
    return (
      <HoldButton hint={say('tighten.done-hold')} disabled={gone} onHeld={go}>
        {label}
      </HoldButton>
    );
  return asked ? (
    <>
      <p role="alert" className={css.asked}>
        {which}
      </p>
      <Row>
        <Button onClick={() => setAsked(false)}>{say('app.no')}</Button>
        <Button kind="act" disabled={gone} onClick={go}>
          {say('tighten.done-second')}
        </Button>
      </Row>
    </>
  ) : (
    <button type="button" className={css.hold} onClick={() => setAsked(true)}>
      {label}
    </button>
  );
}
