import { useEffect, useState } from 'react';
import { useSay } from '../language/speech.tsx';
import { Soft } from '../ui/page.tsx';

/** What the browser answered when it was asked to keep what is recorded, and how full the device is. */
export function StorageLine() {
  const say = useSay();
  const [state, setState] = useState<{ persisted: boolean; used: number; quota: number }>();
  useEffect(() => {
    const ask = async () => {
      const persisted = (await navigator.storage?.persist?.()) ?? false;
      const { usage = 0, quota = 0 } = (await navigator.storage?.estimate?.()) ?? {};
      setState({ persisted, used: Math.ceil(usage / 1e6), quota: Math.floor(quota / 1e6) });
    };
    void ask();
  }, []);
  if (!state) return null;
  return (
    <Soft>
      {say(state.persisted ? 'storage.kept' : 'storage.may-go')} {say('storage.used', { used: state.used, quota: state.quota })}
    </Soft>
  );
}
