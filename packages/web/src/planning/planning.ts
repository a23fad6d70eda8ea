import type { HeadingMeans } from '@clampwright/papers/read';
import type { Language } from '@clampwright/words/app';
import { desk } from '../draft/desk.ts';
import type { Files } from '../draft/draft.ts';
import { watched } from '../job/store.ts';
import { settingsNow, whenSettingsChange } from '../ui/settings.ts';
import type { Engine } from './engine.ts';
import type { PlanView } from './view.ts';
import { type Line, openLine } from './wire.ts';

/** How the plan of the draft in hand stands. */
export interface Planning {
  /** of these files; another draft or an edit makes it older than the desk */
  readonly files: Files | undefined;
  readonly view: PlanView | undefined;
  /** an edit is being planned */
  readonly busy: boolean;
  readonly failed: string | undefined;
}

export const planning = watched<Planning>({ files: undefined, view: undefined, busy: false, failed: undefined });

type Methods = Omit<Engine, 'rounds'>;
type Asks = { readonly [M in keyof Methods]: (...args: Parameters<Methods[M]>) => Promise<Awaited<ReturnType<Methods[M]>>> };

/** The engine comes with the first draft or list: whoever only signs in does not load it. */
let opened: Line | undefined;
function line(): Line {
  opened ??= openLine(new Worker(new URL('./engine-worker.ts', import.meta.url), { type: 'module' }), (told) => {
    const { view } = told as { readonly view: PlanView };
    if (!planning.get().busy) planning.set({ ...planning.get(), view });
  });
  return opened;
}

/** The engine, asked from a page. An answer about the plan is about the last edit that was planned. */
export const engine = new Proxy({} as Asks, {
  get:
    (_, ask: string) =>
    async (...args: readonly unknown[]) => {
      await settled();
      return line().ask(ask, ...args);
    },
});

let sent: Files = new Map();
let running: Promise<void> | undefined;
let spoken: Language | undefined;

/** Plans what is on the desk; while one planning runs, only the last of further edits waits. `means`: what a person says of headings. */
async function follow(means?: readonly HeadingMeans[]): Promise<void> {
  for (;;) {
    const files = desk.get()?.draft.files;
    const { language } = settingsNow();
    if (!files || (files === planning.get().files && language === spoken && !means)) return;
    planning.set({ ...planning.get(), busy: true });
    const put = [...files].filter(([name, bytes]) => sent.get(name) !== bytes);
    const drop = [...sent.keys()].filter((name) => !files.has(name));
    sent = files;
    try {
      if (language !== spoken) await line().ask('speak', language);
      spoken = language;
      const view = await line().ask<PlanView>('plan', put, drop, means);
      planning.set({ files, view, busy: false, failed: undefined });
    } catch (error) {
      planning.set({ files, view: undefined, busy: false, failed: String(error) });
    }
    means = undefined;
    if (desk.get()?.draft.files === files)
      void line()
        .ask('rounds')
        .catch(() => undefined);
  }
}

function start(means?: readonly HeadingMeans[]): Promise<void> {
  running = (running ?? Promise.resolve()).then(() => follow(means)).finally(() => undefined);
  return running;
}

/** Resolves when the last edit is planned. */
const settled = (): Promise<void> => start();

/** Says what headings of the joint list mean; the mapping is kept with the draft. */
export async function tell(means: readonly HeadingMeans[]): Promise<string | undefined> {
  await start(means);
  return planning.get().view?.mapping;
}

desk.subscribe(() => void start());
whenSettingsChange(() => void start());
