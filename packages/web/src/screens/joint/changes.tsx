import type { StepPlan } from '@clampwright/core';
import type { OpenJoint } from '../../job/open-joint.ts';
import { planChanges } from '../../job/plan-changes.ts';
import { useSay, useTrade } from '../../language/speech.tsx';
import css from '../../ui/page.module.css';
import { Banner } from '../../ui/page.tsx';
import { useJob } from '../../ui/world-context.ts';

/** A plan that was issued anew while work went on: what is different for this crew at this joint. */
export function Changes({ state: { joint, card } }: { readonly state: OpenJoint }) {
  const say = useSay();
  const trade = useTrade();
  const { book } = useJob();
  const before = book.cardBeforeOf(joint);
  if (!before) return null;
  const { steps, sequence, datum } = planChanges(before, card);
  const told = (step: StepPlan | undefined): string =>
    step ? `${trade.setting(step, step.setting?.text)} · ${trade.end(step.end)}` : say('joint.step-gone');
  return (
    <Banner level="mind">
      <p>{say('joint.reissued', { number: joint.plan!.number })}</p>
      <ul className={css.list}>
        {steps.map(({ step, bolts, was, now }) => (
          <li key={`${step} ${bolts.join()}`}>
            <strong>{trade.step(step)}</strong> {bolts.length === card.boltCount ? '' : say('swap.bolts', { bolts: bolts.join(', ') })}
            <p>
              <s>{told(was)}</s>
            </p>
            <p>{told(now)}</p>
          </li>
        ))}
        {sequence ? <li>{say('joint.sequence-differs')}</li> : null}
        {datum ? <li>{say('joint.datum-differs')}</li> : null}
        {steps.length === 0 && !sequence && !datum ? <li>{say('joint.nothing-differs')}</li> : null}
      </ul>
    </Banner>
  );
}
