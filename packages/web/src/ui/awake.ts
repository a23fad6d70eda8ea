import { useEffect } from 'react';

/** Keeps the screen lit while a page is shown, where the device allows it. */
export function useAwake(): void {
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
        .catch(() => undefined);
    };
    ask();
    document.addEventListener('visibilitychange', ask);
    return () => {
      going = false;
      void lock?.release();
      document.removeEventListener('visibilitychange', ask);
    };
  }, []);
}
