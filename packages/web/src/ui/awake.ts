import { useEffect, useState } from 'react';

/** Keeps the screen lit while a page is shown; false where the device does not allow it. */
export function useAwake(): boolean {
  const [lit, setLit] = useState('wakeLock' in navigator);
  useEffect(() => {
    let lock: WakeLockSentinel | undefined;
    let going = true;
    const ask = () => {
      if (document.visibilityState !== 'visible') return;
      void navigator.wakeLock
        ?.request('screen')
        .then((one) => {
          if (going) lock = one;
          else void one.release();
        })
        .catch(() => setLit(false));
    };
    ask();
    document.addEventListener('visibilitychange', ask);
    return () => {
      going = false;
      void lock?.release();
      document.removeEventListener('visibilitychange', ask);
    };
  }, []);
  return lit;
}
