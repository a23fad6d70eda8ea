import { readTests } from '@clampwright/papers/read';
import type { LotDraft } from '@clampwright/record';
import { useMemo } from 'react';
import type { Book } from '../../../job/book.ts';
import { useAttachment } from '../../../job/use-attachment.ts';
import { useOffice } from '../../../language/office-speech.tsx';
import { useNotice, useTrade } from '../../../language/speech.tsx';
import { Section, Soft } from '../../../ui/page.tsx';
import own from './tools.module.css';

/** Fastener lots with their tests, read again from the very file that was entered. */
export function Lots({ yard, jobs }: { readonly yard: Book; readonly jobs: readonly Book[] }) {
  const say = useOffice();
  const lots = [yard, ...jobs].flatMap((book) => book.fold.ids('lot').map((id) => ({ book, lot: book.fold.state('lot', id) })));
  return (
    <Section title={say('store.lots')}>
      {lots.length === 0 ? <Soft>{say('store.lots-none')}</Soft> : null}
      <ul className={own.lots}>
        {lots.map(({ book, lot }) => (
          <li key={lot.lot}>
            <h3>{lot.name ?? lot.lot}</h3>
            <p>
              {[
                lot.designation,
                lot.lubricant,
                lot.certificate === undefined ? '' : say('store.certificate-number', { number: lot.certificate }),
              ]
                .filter(Boolean)
                .join(' · ')}
            </p>
            {lot.tests.length === 0 ? <Soft>{say('store.lot-untested')}</Soft> : null}
            {lot.tests.map((test) => (
              <LotTest key={test.mention.entry} book={book} lot={lot} test={test} />
            ))}
          </li>
        ))}
      </ul>
    </Section>
  );
}

function LotTest({ book, lot, test }: { readonly book: Book; readonly lot: LotDraft; readonly test: LotDraft['tests'][number] }) {
  const say = useOffice();
  const { says } = useNotice();
  const { figure } = useTrade();
  const bytes = useAttachment(book, test.report);
  const file = book.fold.state('book', 'book').imports.find((one) => one.file === test.report)?.name;
  const judged = useMemo(() => {
    if (!(bytes instanceof Uint8Array) || file === undefined) return undefined;
    return readTests((path) => (path === file ? bytes : 'missing'), file).judged.find(({ of }) => of === lot.name);
  }, [bytes, file, lot.name]);
  return (
    <div>
      <p data-level={test.passed ? 'fine' : 'stop'}>
        <strong>{say(test.passed ? 'store.test-passed' : 'store.test-failed')}</strong> {test.rule}, {test.mention.on}
        {file === undefined ? '' : `, ${file}`}
      </p>
      {judged?.kind === 'suitability' ? (
        <figure>
          <Factors
            {...judged.verdict}
            label={say('store.factors-of', {
              lot: lot.name ?? '',
              factors: judged.verdict.factors.map((one) => figure(one, 3)).join(', '),
            })}
          />
          <figcaption>
            {say('store.factors', {
              mean: figure(judged.verdict.mean, 3),
              variation: `${figure(100 * judged.verdict.variation, 1)} %`,
              class: judged.verdict.kClass,
            })}
          </figcaption>
        </figure>
      ) : null}
      {judged?.verdict.notices.map((one) => (
        <p key={`${one.code}${JSON.stringify(one.params)}`}>{says(one)}</p>
      ))}
      {bytes === 'missing' ? <Soft>{say('store.report-missing')}</Soft> : null}
    </div>
  );
}

const WIDE = 420;
const TALL = 70;

interface FactorsProps {
  readonly factors: readonly number[];
  readonly mean: number;
  readonly label: string;
}

/** k-factors of the assemblies on a line from 0.06 to 0.24, with the band of k-class K1 (0.10 to 0.16, EN 14399-1) and the mean. */
function Factors({ factors, mean, label }: FactorsProps) {
  const { figure } = useTrade();
  const from = Math.min(0.08, ...factors.map((one) => one - 0.01));
  const to = Math.max(0.18, ...factors.map((one) => one + 0.01));
  const x = (k: number) => 10 + ((k - from) / (to - from)) * (WIDE - 20);
  return (
    <svg viewBox={`0 0 ${WIDE} ${TALL}`} role="img" aria-label={label} className={own.factors}>
      <rect x={x(0.1)} width={x(0.16) - x(0.1)} y="6" height="36" className={own.band} />
      <line x1="0" x2={WIDE} y1="42" y2="42" className={own.axis} />
      <line x1={x(mean)} x2={x(mean)} y1="4" y2="46" className={own.mean} />
      {factors.map((k, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: assemblies stay where they are
        <circle key={at} cx={x(k)} cy={16 + 5 * (at % 4)} r="4.5" className={own.dot} />
      ))}
      {[0.08, 0.1, 0.12, 0.14, 0.16, 0.18, 0.2]
        .filter((k) => k >= from && k <= to)
        .map((k) => (
          <text key={k} x={x(k)} y="60">
            {figure(k, 2)}
          </text>
        ))}
    </svg>
  );
}
