import { useEffect, useState } from 'react';
import { useLocation } from 'wouter';
import { useSay } from '../language/speech.tsx';
import { Banner, Button } from './page.tsx';

/** Says that a newer version waits. It is never put in place by itself, nor offered in the middle of a joint. */
export function UpdateNotice() {
  const say = useSay();
  const [path] = useLocation();
  const [next, setNext] = useState<ServiceWorkerRegistration>();
  const [asked, setAsked] = useState(false);
  useEffect(() => {
    if (!('serviceWorker' in navigator) || import.meta.env.DEV) return;
    void navigator.serviceWorker
      .register('/sw.js')
      .then((registration) => {
        const look = () => {
          if (registration.waiting && navigator.serviceWorker.controller) setNext(registration);
        };
        look();
        registration.addEventListener('updatefound', () => registration.installing?.addEventListener('statechange', look));
      })
      .catch(() => undefined);
    // a page that had one version is opened anew when another takes over, also when that was asked for in another page
    if (!navigator.serviceWorker.controller) return;
    const taken = () => location.reload();
    navigator.serviceWorker.addEventListener('controllerchange', taken);
    return () => navigator.serviceWorker.removeEventListener('controllerchange', taken);
  }, []);
  if (!next || path.startsWith('/joint/')) return null;
  const putInPlace = () => {
    const { waiting } = next;
    if (!waiting) return location.reload();
    setAsked(true);
    waiting.addEventListener('statechange', () => {
      if (waiting.state === 'activated') location.reload();
    });
    waiting.postMessage({ type: 'SKIP_WAITING' });
  };
  return (
    <aside>
      <Banner level="plain">
        <p>{say('app.update')}</p>
        {asked ? <p role="status">{say('app.loading')}</p> : <Button onClick={putInPlace}>{say('app.update-now')}</Button>}
      </Banner>
    </aside>
  );
}
