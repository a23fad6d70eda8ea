import { lazy, Suspense, useEffect, useState } from 'react';
import { Route, Switch, useLocation } from 'wouter';
import { resumeDesk } from '../../draft/desk.ts';
import { OfficeSpeech, useOffice } from '../../language/office-speech.tsx';
import { Soft } from '../../ui/page.tsx';
import { JobPage } from './job/job-pages.tsx';
import { OfficeShell } from './shell/office-shell.tsx';
import { StartPage } from './start/start-page.tsx';

const OpenPage = lazy(() => import('./start/open-page.tsx').then(({ OpenPage }) => ({ default: OpenPage })));
const ListPage = lazy(() => import('./start/list-page.tsx').then(({ ListPage }) => ({ default: ListPage })));
const DefinePage = lazy(() => import('./define/define-page.tsx').then(({ DefinePage }) => ({ default: DefinePage })));
const PlanPage = lazy(() => import('./plan/plan-page.tsx').then(({ PlanPage }) => ({ default: PlanPage })));
const JointPage = lazy(() => import('./plan/joint-page.tsx').then(({ JointPage }) => ({ default: JointPage })));
const SimulatePage = lazy(() => import('./simulate/simulate-page.tsx').then(({ SimulatePage }) => ({ default: SimulatePage })));
const ComparePage = lazy(() => import('./compare/compare-page.tsx').then(({ ComparePage }) => ({ default: ComparePage })));
const IssuePage = lazy(() => import('./issue/issue-page.tsx').then(({ IssuePage }) => ({ default: IssuePage })));
const ToolsPage = lazy(() => import('./tools/tools-page.tsx').then(({ ToolsPage }) => ({ default: ToolsPage })));
const WatchPage = lazy(() => import('./watch/watch-page.tsx').then(({ WatchPage }) => ({ default: WatchPage })));
const HandoverPage = lazy(() => import('./handover/handover-page.tsx').then(({ HandoverPage }) => ({ default: HandoverPage })));
const SettingsPage = lazy(() => import('./settings/settings-page.tsx').then(({ SettingsPage }) => ({ default: SettingsPage })));

interface OfficeProps {
  /** this browser takes part in another job */
  readonly onEnrolled: () => void;
}

/** Where a job is planned and issued, watched and handed over. Planning needs neither server nor sign-in. */
export const OfficeScreen = (props: OfficeProps) => (
  <OfficeSpeech>
    <Office {...props} />
  </OfficeSpeech>
);

function Office({ onEnrolled }: OfficeProps) {
  const say = useOffice();
  const [resumed, setResumed] = useState(false);
  const [path] = useLocation();
  useEffect(() => void resumeDesk().finally(() => setResumed(true)), []);
  if (!resumed) return <p role="status">{say('app.loading')}</p>;
  return (
    <Suspense
      fallback={
        <OfficeShell title={say('app.loading')}>
          <Soft>{say('app.loading')}</Soft>
        </OfficeShell>
      }
    >
      <Switch>
        <Route path="/office">
          <StartPage onEnrolled={onEnrolled} />
        </Route>
        <Route path="/office/open">
          <OpenPage />
        </Route>
        <Route path="/office/list">
          <ListPage />
        </Route>
        <Route path="/office/define/:part?/:which?">
          {({ part, which }) => <DefinePage part={part} which={which === undefined ? undefined : decodeURIComponent(which)} />}
        </Route>
        <Route path="/office/plan">
          <PlanPage />
        </Route>
        <Route path="/office/plan/:tag">{({ tag }) => <JointPage tag={decodeURIComponent(tag)} />}</Route>
        <Route path="/office/simulate">
          <SimulatePage />
        </Route>
        <Route path="/office/compare">
          <ComparePage />
        </Route>
        <Route path="/office/issue">
          <IssuePage />
        </Route>
        <Route path="/office/tools/:serial?">
          {({ serial }) => <ToolsPage serial={serial === undefined ? undefined : decodeURIComponent(serial)} onEnrolled={onEnrolled} />}
        </Route>
        <Route path="/office/watch">
          <WatchPage />
        </Route>
        <Route path="/office/people">
          <JobPage page="people" />
        </Route>
        <Route path="/office/papers">
          <JobPage page="papers" />
        </Route>
        <Route path="/office/handover">
          <HandoverPage />
        </Route>
        <Route path="/office/settings">
          <SettingsPage />
        </Route>
        <Route>
          <OfficeShell title={say('app.not-found')}>
            <Soft>{path}</Soft>
          </OfficeShell>
        </Route>
      </Switch>
    </Suspense>
  );
}
