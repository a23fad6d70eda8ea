import { unzipFolder } from '@clampwright/papers/edit';
import type { BookDraft } from '@clampwright/record';
import { useState } from 'react';
import { useLocation } from 'wouter';
import { putOnDesk } from '../../../draft/desk.ts';
import { draftOf } from '../../../draft/new-draft.ts';
import { attachmentOf } from '../../../job/attachment-of.ts';
import { stopCode } from '../../../job/stop-code.ts';
import { useOffice } from '../../../language/office-speech.tsx';
import { useTrade } from '../../../language/speech.tsx';
import page from '../../../ui/page.module.css';
import { Banner, Button, Field, Row, Section, Soft } from '../../../ui/page.tsx';
import { useJob } from '../../../ui/world-context.ts';
import css from './issue.module.css';
import { filesName } from './issue-plan.ts';

/** Every plan that was issued into the job in hand: its hash, its files to go on from, and its withdrawal. */
export function IssuedPlans() {
  const say = useOffice();
  const { book } = useJob();
  const { plans } = book.fold.state('book', 'book');
  return (
    <Section title={say('issue.issued')}>
      {plans.length === 0 ? <Soft>{say('issue.none')}</Soft> : null}
      <ul className={page.list}>
        {plans.toReversed().map((plan) => (
          <Issued key={plan.number} plan={plan} />
        ))}
      </ul>
    </Section>
  );
}

type IssuedPlan = BookDraft['plans'][number];

function Issued({ plan }: { readonly plan: IssuedPlan }) {
  const say = useOffice();
  const trade = useTrade();
  const { world, book } = useJob();
  const [, goTo] = useLocation();
  const [why, setWhy] = useState('');
  const [missing, setMissing] = useState(false);
  const { imports } = book.fold.state('book', 'book');
  const archive = imports.findLast(({ name }) => name === filesName(plan.number));
  const goOn = async () => {
    const bytes = archive && (await attachmentOf(world, book, archive.file));
    const files = bytes && unzipFolder(bytes);
    if (!files || typeof files === 'string') return setMissing(true);
    setMissing(false);
    await putOnDesk(draftOf(say('issue.goes-on', { number: plan.number }), files));
    return goTo('/office/plan');
  };
  return (
    <li className={css.issued}>
      <p>
        <strong>{say('office.issued', { number: plan.number, time: trade.moment(plan.mention.at) })}</strong>
      </p>
      <p className={css.hash}>{plan.hash}</p>
      {archive ? (
        <Button kind="quiet" onClick={() => void goOn()}>
          {say('issue.go-on', { number: plan.number })}
        </Button>
      ) : null}
      {missing ? <Banner level="mind">{say('issue.files-missing')}</Banner> : null}
      {plan.withdrawn === undefined ? (
        <Row>
          <Field label={say('office.withdraw-why')}>
            <input value={why} onChange={(event) => setWhy(event.target.value)} />
          </Field>
          <Button
            kind="stop"
            disabled={why.trim() === ''}
            onClick={() =>
              void book.record('plan-withdrawn', { number: plan.number, reason: why.trim() }, world.holder).then(() => world.send())
            }
          >
            {say('office.withdraw', { number: plan.number })}
          </Button>
        </Row>
      ) : (
        <Banner level="stop">
          <p>{say('today.withdrawn', { number: plan.number, reason: plan.withdrawn })}</p>
          <p>{say('office.stop-code', { code: stopCode(plan.hash) })}</p>
        </Banner>
      )}
    </li>
  );
}
