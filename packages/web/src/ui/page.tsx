import type { ButtonHTMLAttributes, InputHTMLAttributes, ReactNode } from 'react';
import { Link } from 'wouter';
import { shelfFull } from '../device/shelf.ts';
import { useWatched } from '../job/store.ts';
import { useSay } from '../language/speech.tsx';
import css from './page.module.css';
import { useWorld } from './world-context.ts';

interface PageProps {
  readonly title: string;
  /** where the arrow leads */
  readonly back?: string;
  readonly children: ReactNode;
}

/** A page of the app: what world it is in, its name, its content. */
export function Page({ title, back, children }: PageProps) {
  const say = useSay();
  const world = useWorld();
  const full = useWatched(shelfFull);
  return (
    <>
      <a className={css.skip} href="#content">
        {say('app.skip')}
      </a>
      <header>
        {world?.world === 'practice' ? <p className={css.practice}>{say('practice.mark')}</p> : null}
        <div className={css.head}>
          {back === undefined ? null : (
            <Link className={css.back} href={back} aria-label={say('app.back')}>
              <svg viewBox="0 0 24 24" aria-hidden="true">
                <path d="M15 4 7 12l8 8" fill="none" stroke="currentColor" strokeWidth="2.5" />
              </svg>
            </Link>
          )}
          <h1>{title}</h1>
        </div>
      </header>
      <main id="content" className={css.main}>
        {full ? <Banner level="stop">{say('storage.full')}</Banner> : null}
        {children}
      </main>
    </>
  );
}

export function Section({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  return (
    <section className={css.section}>
      <h2>{title}</h2>
      {children}
    </section>
  );
}

/** What must be seen. `stop` and `mind` are also said aloud by screen readers. */
export function Banner({ level, children }: { readonly level: 'stop' | 'mind' | 'fine' | 'plain'; readonly children: ReactNode }) {
  return (
    <div className={css.banner} data-level={level} role={level === 'stop' || level === 'mind' ? 'alert' : 'status'}>
      {children}
    </div>
  );
}

interface ButtonProps extends ButtonHTMLAttributes<HTMLButtonElement> {
  readonly kind?: 'act' | 'plain' | 'stop' | 'quiet';
}
export const Button = ({ kind = 'plain', type = 'button', ...rest }: ButtonProps) => (
  <button {...rest} type={type} className={css.button} data-kind={kind} />
);
export const LinkButton = ({
  href,
  kind = 'plain',
  children,
}: {
  readonly href: string;
  readonly kind?: string;
  readonly children: ReactNode;
}) => (
  <Link href={href} className={css.button} data-kind={kind}>
    {children}
  </Link>
);

interface FileButtonProps extends Pick<InputHTMLAttributes<HTMLInputElement>, 'accept' | 'capture' | 'multiple'> {
  readonly label: string;
  readonly kind?: ButtonProps['kind'];
  /** the name of what was chosen */
  readonly chosen?: string | undefined;
  /** a whole folder is chosen */
  readonly folder?: boolean;
  readonly onChosen: (files: readonly File[]) => void;
}
/** Chooses files, by a key as well as by a press; the same one may be chosen anew once it has been mended. */
export const FileButton = ({ label, kind = 'plain', chosen, folder, onChosen, ...rest }: FileButtonProps) => (
  <label className={`${css.button} ${css.file}`} data-kind={kind}>
    {label}
    {chosen === undefined ? null : <small>{chosen}</small>}
    <input
      {...rest}
      {...(folder ? { webkitdirectory: '' } : {})}
      type="file"
      className={css.aside}
      onChange={({ target }) => {
        const files = [...(target.files ?? [])];
        target.value = '';
        if (files.length > 0) onChosen(files);
      }}
    />
  </label>
);

export function Field({ label, hint, children }: { readonly label: string; readonly hint?: string; readonly children: ReactNode }) {
  return (
    // biome-ignore lint/a11y/noLabelWithoutControl: the control is its child
    <label className={css.field}>
      <span>{label}</span>
      {hint === undefined ? null : <small>{hint}</small>}
      {children}
    </label>
  );
}

export function Check({
  label,
  checked,
  onChange,
}: {
  readonly label: ReactNode;
  readonly checked: boolean;
  readonly onChange: (checked: boolean) => void;
}) {
  return (
    <label className={css.check}>
      <input type="checkbox" checked={checked} onChange={(event) => onChange(event.target.checked)} />
      <span>{label}</span>
    </label>
  );
}

/** Beside each other where there is room; `short`: two of them on a phone. */
export const Row = ({ short = false, children }: { readonly short?: boolean; readonly children: ReactNode }) => (
  <div className={css.row} data-short={short}>
    {children}
  </div>
);
export const Soft = ({ children }: { readonly children: ReactNode }) => <p className={css.soft}>{children}</p>;

export function Facts({ facts }: { readonly facts: readonly (readonly [string, ReactNode])[] }) {
  return (
    <dl className={css.facts}>
      {facts.map(([name, value]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}
