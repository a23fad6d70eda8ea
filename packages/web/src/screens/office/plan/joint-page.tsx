import { type JointPlan, levelOf } from '@clampwright/core';
import {
  fastenerText,
  handlingText,
  inspectionFacts,
  jointDrawing,
  permitFacts,
  positionsText,
  type ToldFact,
  workFacts,
} from '@clampwright/papers/screen';
import type { UnitSystem } from '@clampwright/words';
import { useEffect, useState } from 'react';
import { Link, useLocation } from 'wouter';
import { desk } from '../../../draft/desk.ts';
import { useWatched } from '../../../job/store.ts';
import { useOffice } from '../../../language/office-speech.tsx';
import { useNotice } from '../../../language/speech.tsx';
import { useWords } from '../../../language/words.ts';
import { engine, planning } from '../../../planning/planning.ts';
import { Banner, Button, LinkButton, Row, Section, Soft } from '../../../ui/page.tsx';
import { save } from '../../../ui/save.ts';
import { useSettings } from '../../../ui/settings.ts';
import { NoDraft } from '../shell/no-draft.tsx';
import { OfficeShell } from '../shell/office-shell.tsx';
import css from './joint-page.module.css';
import { placeOf } from './remedies.ts';
import { Rounds } from './rounds.tsx';
import { SceneView } from './scene-view.tsx';
import { Steps } from './steps.tsx';
import { Sureness } from './sureness.tsx';
import { ToldFacts } from './told-facts.tsx';
import { Verdict } from './verdict.tsx';

/** All that is known of one joint: verdict, bolts and sequence, steps, preload, rounds, time, inspection, cautions. */
export function JointPage({ tag }: { readonly tag: string }) {
  const say = useOffice();
  const here = useWatched(desk);
  const { view } = useWatched(planning);
  const [joint, setJoint] = useState<JointPlan | 'none'>();
  // biome-ignore lint/correctness/useExhaustiveDependencies: another view is another plan
  useEffect(() => {
    let asked = true;
    void engine.joint(tag).then((found) => {
      if (asked) setJoint(found ?? 'none');
    });
    return () => {
      asked = false;
    };
  }, [tag, view]);
  if (!here) return <NoDraft title={tag} />;
  if (joint === undefined || !view)
    return (
      <OfficeShell title={tag}>
        <Soft>{say('desk.planning')}</Soft>
      </OfficeShell>
    );
  if (joint === 'none')
    return (
      <OfficeShell title={tag}>
        <Banner level="plain">{say('bolt.no-joint')}</Banner>
        <LinkButton href="/office/plan">{say('office.page-plan')}</LinkButton>
      </OfficeShell>
    );
  return (
    <OfficeShell title={`${joint.tag} ${joint.title}`}>
      <Around tag={tag} tags={[...new Set(view.rows.map((row) => row.tag))]} />
      <JointView joint={joint} units={view.job?.units ?? 'metric'} roundsOpen={view.roundsOpen > 0} />
    </OfficeShell>
  );
}

/** From joint to joint, and to what this one is made from. */
function Around({ tag, tags }: { readonly tag: string; readonly tags: readonly string[] }) {
  const say = useOffice();
  const at = tags.indexOf(tag);
  const link = (to: string | undefined, text: string) =>
    to === undefined ? <span /> : <Link href={`/office/plan/${encodeURIComponent(to)}`}>{text}</Link>;
  return (
    <nav className={css.around} aria-label={say('bolt.around')}>
      <Link href="/office/plan">{say('bolt.all')}</Link>
      {link(tags[at - 1], `← ${tags[at - 1]}`)}
      {link(tags[at + 1], `${tags[at + 1]} →`)}
      <Link href={`/office/define/joints/${encodeURIComponent(tag)}`}>{say('bolt.edit')}</Link>
      <CardButton tag={tag} />
    </nav>
  );
}

/** The bolting card of this joint as the plan stands now. */
function CardButton({ tag }: { readonly tag: string }) {
  const say = useOffice();
  const { language } = useSettings();
  const [busy, setBusy] = useState(false);
  const make = async () => {
    setBusy(true);
    const [whole, { makePaper }] = await Promise.all([engine.whole(), import('../job/make-paper.ts')]);
    const plan = whole?.plan;
    const files =
      plan && (await makePaper('cards-a5', { ...plan, joints: plan.joints.filter((one) => one.tag === tag) }, [language], () => undefined));
    for (const content of Object.values(files ?? {})) save(`${tag}.pdf`, content);
    setBusy(false);
  };
  return (
    <button type="button" disabled={busy} onClick={() => void make()}>
      {say('bolt.card')}
    </button>
  );
}

interface JointProps {
  readonly joint: JointPlan;
  readonly units: UnitSystem;
  readonly roundsOpen: boolean;
}

function JointView({ joint, units, roundsOpen }: JointProps) {
  const say = useOffice();
  const words = useWords();
  const { label } = words;
  const { sequence } = joint;
  return (
    <>
      <p>
        <Verdict verdict={joint.verdict} /> · {[words.term(joint.rule.title), joint.rule.edition, joint.flange].filter(Boolean).join(' · ')}
      </p>
      {joint.reasons.length > 0 ? <Reasons joint={joint} units={units} /> : null}
      <Section title={say('bolt.drawing')}>
        <div className={css.pair}>
          <SceneView scene={jointDrawing(joint, 120, 110, 'under', [words])} />
          <div className={css.told}>
            <p>{words.datum(joint.datum)}</p>
            {sequence.list.length > 0 ? (
              <>
                <h3>{say('bolt.order')}</h3>
                <p>{label(`pattern.${sequence.pattern}`)}.</p>
                <p className={css.order}>{sequence.list.map((bolts) => bolts.join('+')).join(' · ')}</p>
                <details>
                  <summary>{label('sequence.painted')}</summary>
                  <p>{label('sequence.painted-lead')}</p>
                  <p className={css.order}>{sequence.painted.map((turn, at) => `${at + 1}: ${turn}`).join(' · ')}</p>
                </details>
              </>
            ) : null}
          </div>
        </div>
      </Section>
      {joint.subgroups.map((subgroup) => (
        <Section
          key={subgroup.id}
          title={`${joint.subgroups.length > 1 ? `${label('joint.bolts', { positions: positionsText(subgroup.positions) })}: ` : ''}${subgroup.positions.length} × ${fastenerText(subgroup, units, words)}`}
        >
          <p>{handlingText(subgroup, units, words)}</p>
          {subgroup.tightening ? (
            <>
              <Steps tightening={subgroup.tightening} units={units} />
              <Sureness tightening={subgroup.tightening} units={units} />
            </>
          ) : (
            <Banner level="mind">{label('joint.no-value')}</Banner>
          )}
        </Section>
      ))}
      {joint.interaction ? <Rounds joint={joint} interaction={joint.interaction} units={units} /> : null}
      {!joint.interaction && roundsOpen ? <Soft>{say('bolt.rounds-open')}</Soft> : null}
      {joint.work ? <Told title={say('bolt.time')} facts={workFacts(joint.work, words)} /> : null}
      {joint.checks.length > 0 ? (
        <Section title={say('bolt.checks')}>
          <ul className={css.lines}>
            {joint.checks.map(({ check }) => (
              <li key={check}>{label(`checks.${check}`)}</li>
            ))}
          </ul>
        </Section>
      ) : null}
      {joint.inspection ? <Told title={say('bolt.inspection')} facts={inspectionFacts(joint.inspection, words)} /> : null}
      <Told title={say('bolt.permits')} facts={permitFacts(joint, words)} />
      <Section title={say('bolt.cautions')}>
        <ul className={css.lines}>
          {joint.cautions.map((code) => (
            <li key={code}>{words.caution(code)}</li>
          ))}
        </ul>
      </Section>
    </>
  );
}

function Reasons({ joint, units }: { readonly joint: JointPlan; readonly units: UnitSystem }) {
  const say = useOffice();
  const { label } = useWords();
  const { says, remedy } = useNotice();
  const [, goTo] = useLocation();
  return (
    <ol className={css.reasons}>
      {joint.reasons.map((reason) => {
        const place = placeOf({ notice: reason, tags: [joint.tag] });
        return (
          <li key={JSON.stringify(reason)} data-level={levelOf(reason.code)}>
            <b>{label(`level.${levelOf(reason.code)}`)}</b>
            <p>{says(reason, units)}</p>
            <Row>
              <p className={css.remedy}>{remedy(reason, units)}</p>
              <Button
                kind="quiet"
                onClick={() => {
                  place.prepare();
                  goTo(place.href);
                }}
              >
                {say('sheet.mend-there')}
              </Button>
            </Row>
          </li>
        );
      })}
    </ol>
  );
}

/** Facts with their sources behind them. */
const Told = ({ title, facts }: { readonly title: string; readonly facts: readonly ToldFact[] }) => (
  <Section title={title}>
    <ToldFacts facts={facts} />
  </Section>
);
