import { type KeyboardEvent, type PointerEvent, type ReactNode, useEffect, useRef, useState } from 'react';
import css from './hold-button.module.css';

const HOLD_MS = 600;

interface HoldButtonProps {
  readonly children: ReactNode;
  readonly hint: string;
  readonly disabled?: boolean;
  readonly onHeld: () => void;
}

/** An action that rain and sleeves do not set off: pressed until it is full. Works with a finger, a glove, a mouse, space and enter. */
export function HoldButton({ children, hint, disabled = false, onHeld }: HoldButtonProps) {
  const [holding, setHolding] = useState(false);
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  const stop = () => {
    clearTimeout(timer.current);
    timer.current = undefined;
    setHolding(false);
  };
  const start = () => {
    if (disabled || timer.current !== undefined) return;
    setHolding(true);
    timer.current = setTimeout(() => {
      stop();
      onHeld();
    }, HOLD_MS);
  };
  // a bolt that was recorded meanwhile is not recorded again by a finger that still lies there
  useEffect(() => () => clearTimeout(timer.current), []);
  const isKey = ({ key }: KeyboardEvent) => key === ' ' || key === 'Enter';
  return (
    <button
      type="button"
      className={css.hold}
      data-holding={holding}
      disabled={disabled}
      onPointerDown={(event: PointerEvent) => {
        if (event.isPrimary) start();
      }}
      onPointerUp={stop}
      onPointerLeave={stop}
      onPointerCancel={stop}
      onContextMenu={(event) => event.preventDefault()}
      onKeyDown={(event) => {
        if (!isKey(event)) return;
        event.preventDefault();
        if (!event.repeat) start();
      }}
      onKeyUp={(event) => {
        if (isKey(event)) stop();
      }}
      onBlur={stop}
    >
      <span className={css.fill} />
      <span className={css.words}>
        {children}
        <small>{hint}</small>
      </span>
    </button>
  );
}
