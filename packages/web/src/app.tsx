import { lazy, Suspense, useEffect, useLayoutEffect, useState } from 'react';
import { Redirect, Route, Switch, useLocation } from 'wouter';
import { keep, kept, openDatabase, type World } from './device/database.ts';
import { onlyHere, takeOver } from './device/only-here.ts';
import { useSending } from './device/use-sending.ts';
import { type OpenWorld, openWorld } from './job/world.ts';
import { useSay } from './language/speech.tsx';
import { JointScreens } from './screens/joint/joint-screens.tsx';
import { StartScreen } from './screens/start.tsx';
import { TodayScreen } from './screens/today.tsx';
import { Banner, Button, LinkButton, Page } from './ui/page.tsx';
import { UpdateNotice } from './ui/update-notice.tsx';
import { useBook, WorldContext } from './ui/world-context.ts';

const VerifyScreen = lazy(() => import('./screens/verify.tsx').then(({ VerifyScreen }) => ({ default: VerifyScreen })));
const SettingsScreen = lazy(() => import('./screens/settings.tsx').then(({ SettingsScreen }) => ({ default: SettingsScreen })));
const ValveScreen = lazy(() => import('./screens/valve.tsx').then(({ ValveScreen }) => ({ default: ValveScreen })));
const ScanScreen = lazy(() => import('./screens/scan.tsx').then(({ ScanScreen }) => ({ default: ScanScreen })));
const ShiftScreen = lazy(() => import('./screens/shift.tsx').then(({ ShiftScreen }) => ({ default: ShiftScreen })));
const WhoScreen = lazy(() => import('./screens/who.tsx').then(({ WhoScreen }) => ({ default: WhoScreen })));
const OfficeScreen = lazy(() => import('./screens/office/office.tsx').then(({ OfficeScreen }) => ({ default: OfficeScreen })));
const ToolScreen = lazy(() => import('./screens/tool-check.tsx').then(({ ToolScreen }) => ({ default: ToolScreen })));

const WORLD_KEY = 'clampwright world';
const worldNow = (): World => (sessionStorage.getItem(WORLD_KEY) === 'practice' ? 'practice' : 'work');
function enterWorld(world: World): void {
  sessionStorage.setItem(WORLD_KEY, world);
  location.assign('/');
}

type State =
  | { readonly kind: 'opening' | 'elsewhere' | 'lost' }
  | { readonly kind: 'nowhere' }
  | { readonly kind: 'open'; readonly world: OpenWorld; readonly holder: string | undefined; readonly job: string | undefined };

/** The app: the world in hand, and its pages. Verifying a file needs no world. */
export function App() {
  const say = useSay();
  return (
    <Suspense fallback={<p role="status">{say('app.loading')}</p>}>
      <UpdateNotice />
      <Switch>
        <Route path="/verify">
          <VerifyScreen back="/" />
        </Route>
        <Route>
          <InWorld />
        </Route>
      </Switch>
    </Suspense>
  );
}

function InWorld() {
  const say = useSay();
  const world = worldNow();
  const [state, setState] = useState<State>({ kind: 'opening' });
  const lost = () => setState({ kind: 'lost' });
  const open = async () => {
    const db = await openDatabase(world, lost);
    const opened = await openWorld(db, world);
    setState(
      opened
        ? { kind: 'open', world: opened, holder: await kept<string>(db, 'holder'), job: await kept<string>(db, 'job') }
        : { kind: 'nowhere' },
    );
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: once for each world; a page of another world is another page
  useEffect(() => {
    void onlyHere(world, lost).then((where) => (where === 'ours' ? open() : setState({ kind: 'elsewhere' })));
  }, [world]);
  switch (state.kind) {
    case 'opening':
      return <p role="status">{say('app.loading')}</p>;
    case 'elsewhere':
      return (
        <Page title={say('elsewhere.title')}>
          <p>{say('elsewhere.text')}</p>
          <Button kind="act" onClick={() => void takeOver(world, lost).then(open)}>
            {say('elsewhere.here')}
          </Button>
        </Page>
      );
    case 'lost':
      return (
        <Page title={say('elsewhere.title')}>
          <Banner level="stop">{say('elsewhere.lost')}</Banner>
          <Button onClick={() => location.reload()}>{say('elsewhere.here')}</Button>
        </Page>
      );
    case 'nowhere':
      return (
        <Switch>
          <Route path="/office/*?">
            <OfficeScreen onEnrolled={() => void open()} />
          </Route>
          <Route>
            <StartScreen world={world} onEnrolled={() => void open()} onPractice={() => enterWorld('practice')} />
          </Route>
        </Switch>
      );
    case 'open':
      return (
        <WorldContext
          value={{
            ...state.world,
            holder: state.holder,
            setHolder: (holder) => {
              setState({ ...state, holder });
              void keep(state.world.db, 'holder', holder);
            },
            job: state.job,
            setJob: (job) => {
              setState({ ...state, job });
              void keep(state.world.db, 'job', job);
            },
          }}
        >
          <Pages world={state.world} />
        </WorldContext>
      );
  }
}

function Pages({ world }: { readonly world: OpenWorld }) {
  useSending(world);
  const [path] = useLocation();
  // biome-ignore lint/correctness/useExhaustiveDependencies: another page begins at its top, before anybody can press anything on it
  useLayoutEffect(() => {
    window.scrollTo(0, 0);
  }, [path]);
  const say = useSay();
  const book = useBook();
  if (path === '/office' || path.startsWith('/office/')) return <OfficeScreen onEnrolled={() => void world.send()} />;
  if (!book)
    return (
      <Page title={say('app.today')}>
        <Banner level="plain">{say('today.no-job')}</Banner>
        <LinkButton href="/office">{say('office.title')}</LinkButton>
      </Page>
    );
  return (
    <Switch>
      <Route path="/">
        <TodayScreen />
      </Route>
      <Route path="/joint/:joint/*?">{({ joint }) => <JointScreens id={joint} />}</Route>
      <Route path="/tool/:tool">{({ tool }) => <ToolScreen tool={decodeURIComponent(tool)} />}</Route>
      <Route path="/valve/:joint">{({ joint }) => <ValveScreen id={joint} />}</Route>
      <Route path="/scan">
        <ScanScreen />
      </Route>
      <Route path="/shift">
        <ShiftScreen />
      </Route>
      <Route path="/who">
        <WhoScreen />
      </Route>
      <Route path="/settings">
        <SettingsScreen onLeavePractice={() => enterWorld('work')} />
      </Route>
      <Route path="/index.html">
        <Redirect to="/" />
      </Route>
      <Route>
        <Page title={say('app.not-found')} back="/">
          {null}
        </Page>
      </Route>
    </Switch>
  );
}
