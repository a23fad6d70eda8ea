import { type ReactNode, useEffect } from 'react';
import { Link, useLocation } from 'wouter';
import { clearDesk, desk, isKept, redo, rename, undo } from '../../../draft/desk.ts';
import { useWatched } from '../../../job/store.ts';
import { useOffice } from '../../../language/office-speech.tsx';
import { planning } from '../../../planning/planning.ts';
import ui from '../../../ui/page.module.css';
import { useSession } from '../job/session.ts';
import { Verdict } from '../plan/verdict.tsx';
import css from './office-shell.module.css';
import { DRAFT_PAGES, drafts, isFor, JOB_PAGES, type JobPageName, type OfficePageName } from './pages.ts';

interface ShellProps {
  readonly title: string;
  /** uses the whole width: tables */
  readonly wide?: boolean;
  readonly children: ReactNode;
}

/** Every page of the office: where one is, what draft is in hand and how it stands, and the way to everything else. */
export function OfficeShell({ title, wide = false, children }: ShellProps) {
  const say = useOffice();
  const { session } = useSession();
  const roles = session.kind === 'in' ? session.account.roles : undefined;
  const mine = Object.fromEntries(Object.entries(JOB_PAGES).filter(([name]) => isFor(name as JobPageName, roles)));
  useUndoKeys();
  useEffect(() => {
    document.title = `${title} · Clampwright`;
    // in a narrow window the pages stand in one line that is longer than what is seen
    document.querySelector('nav [aria-current=page]')?.scrollIntoView({ inline: 'nearest', block: 'nearest' });
  }, [title]);
  return (
    <div className={css.office}>
      <a className={ui.skip} href="#content">
        {say('app.skip')}
      </a>
      <header className={css.top}>
        <Link className={css.home} href="/" aria-label={say('office.to-crew')}>
          <svg viewBox="0 0 24 24" aria-hidden="true">
            <path d="M12 2l8.7 5v10L12 22l-8.7-5V7z" fill="none" stroke="currentColor" strokeWidth="2.2" />
            <circle cx="12" cy="12" r="4" fill="currentColor" />
          </svg>
        </Link>
        {drafts(roles) ? <DeskLine /> : null}
      </header>
      <nav className={css.nav} aria-label={say('office.nav')}>
        {drafts(roles) ? <Ways title={say('office.nav-draft')} pages={DRAFT_PAGES} /> : null}
        <Ways title={say('office.nav-job')} pages={mine} />
      </nav>
      <main id="content" tabIndex={-1} className={css.main} data-wide={wide ? '' : undefined}>
        <h1>{title}</h1>
        {children}
      </main>
    </div>
  );
}

function Ways({ title, pages }: { readonly title: string; readonly pages: Readonly<Partial<Record<OfficePageName, string>>> }) {
  const say = useOffice();
  const [path] = useLocation();
  const here = (href: string) => path === href || (href !== '/office' && path.startsWith(`${href}/`));
  return (
    <div className={css.ways}>
      <p>{title}</p>
      <ul>
        {(Object.entries(pages) as [OfficePageName, string][]).map(([name, href]) => (
          <li key={name}>
            <Link href={href} aria-current={here(href) ? 'page' : undefined}>
              {say(`office.page-${name}`)}
            </Link>
          </li>
        ))}
      </ul>
    </div>
  );
}

/** The draft in hand: its name, whether it is kept, what was planned of it, what can be taken back. */
function DeskLine() {
  const say = useOffice();
  const here = useWatched(desk);
  const kept = useWatched(isKept);
  const { view, busy, failed } = useWatched(planning);
  if (!here) return <p className={css.none}>{say('desk.none')}</p>;
  const { draft, past, future } = here;
  return (
    <>
      {draft.demo ? <strong className={css.demo}>{say('desk.demo')}</strong> : null}
      <label className={css.name}>
        <span className={ui.aside}>{say('desk.name')}</span>
        <input key={draft.id} defaultValue={draft.name} onBlur={(event) => rename(event.target.value)} disabled={draft.demo} />
      </label>
      <p className={css.state} role="status">
        {failed !== undefined
          ? say('desk.failed')
          : busy
            ? say('desk.planning')
            : view && view.roundsOpen > 0
              ? say('desk.rounds', { open: view.roundsOpen })
              : say(kept ? 'desk.kept' : 'desk.keeping')}
      </p>
      {view?.sums ? (
        <p className={css.sums}>
          {(['ready', 'attention', 'stop'] as const).map((verdict) => (
            <Link key={verdict} href={`/office/plan?verdict=${verdict}`}>
              <Verdict verdict={verdict} /> <b>{view.sums![verdict]}</b>
            </Link>
          ))}
        </p>
      ) : null}
      <span className={css.tools}>
        <button
          type="button"
          onClick={undo}
          disabled={past.length === 0}
          aria-label={say('desk.undo')}
          title={`${say('desk.undo')} (Ctrl+Z)`}
        >
          ↶
        </button>
        <button
          type="button"
          onClick={redo}
          disabled={future.length === 0}
          aria-label={say('desk.redo')}
          title={`${say('desk.redo')} (Ctrl+Shift+Z)`}
        >
          ↷
        </button>
        <button type="button" onClick={() => void clearDesk()} aria-label={say('desk.close')} title={say('desk.close')}>
          ×
        </button>
      </span>
    </>
  );
}

/** Ctrl+Z and Ctrl+Shift+Z or Ctrl+Y, but not while a text is being typed: the field has its own. */
function useUndoKeys(): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
      if ((event.target as HTMLElement).matches?.('input:not([type=checkbox]), textarea')) return;
      const key = event.key.toLowerCase();
      if (key !== 'z' && key !== 'y') return;
      event.preventDefault();
      if (key === 'y' || event.shiftKey) redo();
      else undo();
    };
    addEventListener('keydown', onKey);
    return () => removeEventListener('keydown', onKey);
  }, []);
}
