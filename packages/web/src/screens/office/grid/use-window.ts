import { type RefObject, useCallback, useLayoutEffect, useState } from 'react';
import { usePrinting } from '../../../ui/printing.ts';

/** Rows beyond the edge that lie ready. */
const SPARE = 6;

/** Which rows of a long list are drawn: those in sight, and a few beyond. All rows are `height` pixels high. */
export function useWindow(
  scroller: RefObject<HTMLElement | null>,
  rows: number,
  height: number,
): { readonly from: number; readonly to: number } {
  const printing = usePrinting();
  const [seen, setSeen] = useState({ from: 0, to: 40 });
  const look = useCallback(() => {
    const box = scroller.current;
    if (!box) return;
    const from = Math.max(0, Math.floor(box.scrollTop / height) - SPARE);
    const to = Math.ceil((box.scrollTop + box.clientHeight) / height) + SPARE;
    setSeen((before) => (before.from === from && before.to === to ? before : { from, to }));
  }, [scroller, height]);
  useLayoutEffect(() => {
    const box = scroller.current;
    if (!box) return;
    look();
    box.addEventListener('scroll', look, { passive: true });
    const sizes = new ResizeObserver(look);
    sizes.observe(box);
    return () => {
      box.removeEventListener('scroll', look);
      sizes.disconnect();
    };
  }, [scroller, look]);
  if (printing) return { from: 0, to: rows };
  return { from: Math.min(seen.from, Math.max(0, rows - 1)), to: Math.min(rows, seen.to) };
}
