import { useWatched } from '../job/store.ts';
import { useNotice, useSay, useTrade } from '../language/speech.tsx';
import { Banner, Button, Soft } from '../ui/page.tsx';
import type { WorldHere } from '../ui/world-context.ts';

/** The state of sending, in words. */
export function SyncLine({ world }: { readonly world: WorldHere }) {
  const say = useSay();
  const trade = useTrade();
  const { says } = useNotice();
  const state = useWatched(world.sync);
  const waiting = useWatched(world.waiting);
  const minutes = useWatched(world.clockOff);
  if (world.world === 'practice') return null;
  return (
    <>
      {Math.abs(minutes) >= 5 ? <Banner level="mind">{say('sync.clock', { minutes: Math.abs(minutes) })}</Banner> : null}
      {state.kind === 'revoked' || state.kind === 'misfit' ? <Banner level="stop">{say(`sync.${state.kind}`)}</Banner> : null}
      {state.kind === 'refused' ? (
        <Banner level="stop">{say('sync.refused', { why: state.notices.map((one) => says(one)).join(' ') })}</Banner>
      ) : null}
      {waiting === 0 && (state.kind === 'revoked' || state.kind === 'misfit' || state.kind === 'refused') ? null : (
        <Soft>
          {state.kind === 'syncing'
            ? say('sync.syncing')
            : state.kind === 'offline'
              ? say('sync.offline', { count: waiting })
              : state.kind === 'synced' && waiting === 0
                ? say('sync.synced', { time: trade.time(state.at) })
                : say('sync.waiting', { count: waiting })}
        </Soft>
      )}
      {waiting > 0 || state.kind === 'offline' ? (
        <Button kind="quiet" onClick={() => void world.send()}>
          {say('sync.now')}
        </Button>
      ) : null}
    </>
  );
}
