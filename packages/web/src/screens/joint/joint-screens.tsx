import { lazy } from 'react';
import { Route, Switch } from 'wouter';
import { jointState } from '../../job/joint-state.ts';
import { useSay } from '../../language/speech.tsx';
import { Banner, Page } from '../../ui/page.tsx';
import { useJob } from '../../ui/world-context.ts';
import { BeforeScreen } from './before.tsx';
import { ElseScreen } from './else.tsx';
import { InspectScreen } from './inspect.tsx';
import { LoosenScreen } from './loosen.tsx';
import { plannedTool } from './planned-tool.ts';
import { TightenScreen } from './tighten.tsx';

// plans anew, so it brings the planner with it
const SwapScreen = lazy(() => import('./swap.tsx').then(({ SwapScreen }) => ({ default: SwapScreen })));

/** The pages of one joint. */
export function JointScreens({ id }: { readonly id: string }) {
  const say = useSay();
  const { book } = useJob();
  if (!book.fold.ids('joint').includes(id))
    return (
      <Page title={say('app.not-found')} back="/">
        {null}
      </Page>
    );
  const state = jointState(book, id);
  const { card } = state;
  if (!card)
    return (
      <Page title={state.joint.tag ?? id} back="/">
        <Banner level="mind">{say('joint.no-card')}</Banner>
      </Page>
    );
  const here = { ...state, card };
  return (
    <Switch>
      <Route path="/joint/:joint/tighten">
        <TightenScreen state={here} />
      </Route>
      <Route path="/joint/:joint/else/:bolt">{({ bolt }) => <ElseScreen state={here} bolt={Number(bolt)} />}</Route>
      <Route path="/joint/:joint/swap/:bolt">
        {({ bolt }) => {
          const tool = plannedTool(here, Number(bolt));
          return tool ? <SwapScreen state={here} {...tool} /> : <BeforeScreen state={here} />;
        }}
      </Route>
      <Route path="/joint/:joint/loosen">
        <LoosenScreen state={here} />
      </Route>
      <Route path="/joint/:joint/inspect">
        <InspectScreen state={here} />
      </Route>
      <Route>
        <BeforeScreen state={here} />
      </Route>
    </Switch>
  );
}
