import type { JointPlan, Plan } from '@clampwright/core';
import { cautionText, label } from '@clampwright/words';
import { Around } from './around.tsx';
import { fastenerText, handlingText } from './bolt-line.ts';
import { Interaction } from './interaction.tsx';
import { KitList } from './kit-list.tsx';
import type { Links } from './links.ts';
import { PageFoot } from './page-foot.tsx';
import { PermitsView } from './permits.tsx';
import { Preload } from './preload.tsx';
import { Reasons } from './reasons.tsx';
import { Scatter } from './scatter.tsx';
import { Sequence } from './sequence.tsx';
import { positionsText } from './spoken.ts';
import { StepTable } from './step-table.tsx';
import { Verdict } from './verdict.tsx';

/** All that is known of one joint. */
export function JointPage({ plan, joint, links }: { readonly plan: Plan; readonly joint: JointPlan; readonly links: Links }) {
  const { units } = plan.job;
  const steps = label(joint.rule.stepWord === 'pass' ? 'joint.passes' : 'joint.steps');
  return (
    <>
      <header className="sheet-head">
        <p className="kicker">
          <a href={links.home}>{plan.job.title}</a>
        </p>
        <h1>
          {joint.tag} <span className="title">{joint.title}</span>
        </h1>
        <p className="method">
          {[
            `${joint.rule.title}${joint.rule.edition === '' ? '' : ` (${joint.rule.edition})`}`,
            joint.flange && label('joint.flange', { flange: joint.flange }),
          ]
            .filter(Boolean)
            .join(' · ')}
        </p>
        <nav className="ways">
          <a href={links.home}>{label('page.back')}</a>
          <a href={links.cards(joint.tag)}>{label('page.card')}</a>
        </nav>
      </header>
      <main id="content">
        <section className={`judgement ${joint.verdict}`}>
          <h2>
            <Verdict verdict={joint.verdict} /> <span className="meaning">{label(`verdict.${joint.verdict}`)}</span>
          </h2>
          <Reasons reasons={joint.reasons} units={units} />
        </section>
        {joint.subgroups.map((subgroup) => (
          <section key={subgroup.id} className="subgroup">
            <h2>
              {joint.subgroups.length > 1 ? `${label('joint.bolts', { positions: positionsText(subgroup.positions) })}: ` : ''}
              {subgroup.positions.length} × {fastenerText(subgroup, units)}
            </h2>
            <p className="lead">{handlingText(subgroup, units)}</p>
            {subgroup.tightening ? (
              <>
                <h3>{steps}</h3>
                <StepTable tightening={subgroup.tightening} units={units} name={`${steps} ${subgroup.id}`.trim()} />
                <h3>{label('joint.preload')}</h3>
                <Preload tightening={subgroup.tightening} units={units} />
                <Scatter tightening={subgroup.tightening} units={units} />
              </>
            ) : (
              <p>{label('joint.no-value')}</p>
            )}
          </section>
        ))}
        <Sequence joint={joint} />
        {joint.interaction && <Interaction joint={joint} interaction={joint.interaction} units={units} />}
        <PermitsView joint={joint} />
        <Around joint={joint} />
        <section>
          <h2>{label('joint.cautions')}</h2>
          <ul className="cautions">
            {joint.cautions.map((code) => (
              <li key={code}>{cautionText(code)}</li>
            ))}
          </ul>
        </section>
        <KitList kit={joint.kit} />
      </main>
      <PageFoot engine={plan.engine} />
    </>
  );
}
