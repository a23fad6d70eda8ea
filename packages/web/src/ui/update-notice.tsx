import { useEffect, useState } from 'react';
import { useLocation } from 'wouter';
import { useSay } from '../language/speech.tsx';
import { Banner, Button } from './page.tsx';

/** Says that a newer version waits. It is never put in place by itself, nor offered in the middle of a joint. */
export function UpdateNotice() {
  const say = useSay();
  const [path] = useLocation();
  const [waiting, setWaiting] = useState<ServiceWorker>();
  useEffect(() => {
    if (!('serviceWorker' in navigator) || import.meta.env.DEV) return;
    let began = false;
    void navigator.serviceWorker
      .register('/sw.js')
      .then((registration) => {
        const look = () => {
          if (registration.waiting && navigator.serviceWorker.controller) setWaiting(registration.waiting);
        };
        look();
        registration.addEventListener('updatefound', () => registration.installing?.addEventListener('statechange', look));
      })
      .catch(() => undefined);
    const taken = () => {
      if (began) location.reload();
    };
    began = navigator.serviceWorker.controller !== null;
    navigator.serviceWorker.addEventListener('controllerchange', taken);
    return () => navigator.serviceWorker.removeEventListener('controllerchange', taken);
  }, []);
  if (!waiting || path.startsWith('/joint/')) return null;
  return (
    <aside>
      <Banner level="plain">
        <p>{say('app.update')}</p>
        <Button onClick={() => waiting.postMessage({ type: 'SKIP_WAITING' })}>{say('app.update-now')}</Button>
      </Banner>
    </aside>
  );
}
