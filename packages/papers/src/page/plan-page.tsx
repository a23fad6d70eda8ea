import type { Plan, Verdict as VerdictName } from '@clampwright/core';
import { dayLines, label } from '@clampwright/words';
import { Facts } from './facts.tsx';
import { FixFirst } from './fix-first.tsx';
import { JointTable } from './joint-table.tsx';
import { KitList } from './kit-list.tsx';
import type { Links } from './links.ts';
import { PageFoot } from './page-foot.tsx';
import { ToolTable } from './tool-table.tsx';
import { Verdict } from './verdict.tsx';

const VERDICTS: readonly VerdictName[] = ['stop', 'attention', 'ready'];

/** The whole plan at a glance: sums, what to fix first, every joint, tools, what to bring. */
export function PlanPage({ plan, links }: { readonly plan: Plan; readonly links: Links }) {
  const { job, sums } = plan;
  return (
    <>
      <header className="sheet-head">
        <p className="kicker">{label('page.plan')}</p>
        <h1>{job.title}</h1>
        <Facts
          facts={[
            [label('job.site'), job.site],
            [label('job.date'), job.workDate],
            job.people.length > 0 && [label('job.people'), job.people.map(({ name, role }) => `${name} (${role})`).join(', ')],
          ]}
        />
        <nav className="ways">
          <a href={links.cards()}>{label('page.cards')}</a>
          <a href={links.data}>{label('page.data')}</a>
        </nav>
      </header>
      <main id="content">
        <section className="sums">
          <p className="total">{label('job.sums', { joints: sums.joints, bolts: sums.bolts })}</p>
          <ul>
            {VERDICTS.map((verdict) => (
              <li key={verdict} className={sums[verdict] === 0 ? 'zero' : undefined}>
                <span className="count">{sums[verdict]}</span>
                <Verdict verdict={verdict} />
                <span className="meaning">{label(`verdict.${verdict}`)}</span>
              </li>
            ))}
          </ul>
        </section>
        <FixFirst plan={plan} links={links} />
        <section className="wide">
          <h2>{label('joints.title')}</h2>
          {plan.joints.length === 0 && <p>{label('joints.none')}</p>}
          {plan.joints.length > 0 && (
            <JointTable
              plan={plan}
              links={links}
              joints={VERDICTS.flatMap((verdict) => plan.joints.filter((one) => one.verdict === verdict))}
            />
          )}
        </section>
        <section>
          <h2>{label('sums.title')}</h2>
          <ul className="cautions">
            {dayLines(plan).map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </section>
        <ToolTable plan={plan} />
        <KitList kit={sums.kit} />
      </main>
      <PageFoot engine={plan.engine} />
    </>
  );
}
