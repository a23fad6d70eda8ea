import type { Plan } from '@clampwright/core';
import { label, levelText } from '@clampwright/words';
import { groupRemedies } from './group-remedies.ts';
import type { Links } from './links.ts';

/** What to mend before anybody goes out, each thing once. */
export function FixFirst({ plan, links }: { readonly plan: Plan; readonly links: Links }) {
  const things = groupRemedies(plan.joints, plan.reasons, plan.job.units);
  return (
    <section className="fix">
      <h2>{label('fix.title')}</h2>
      <p className="lead">{label(things.length > 0 ? 'fix.lead' : 'fix.none')}</p>
      <ol className="mend">
        {things.map((one) => (
          <li key={`${one.level}${one.remedy}`} className={one.level}>
            <span className="level">{levelText(one.level)}</span>
            <div>
              <p className="action">{one.remedy}</p>
              <ul className="why">
                {one.says.map((text) => (
                  <li key={text}>{text}</li>
                ))}
              </ul>
            </div>
            <p className="tags">
              {one.tags.length === 0 ? label('fix.whole-job') : label('fix.joints', { count: one.tags.length })}
              {one.tags.map((tag) => (
                <a key={tag} href={links.joint(tag)}>
                  {tag}
                </a>
              ))}
            </p>
          </li>
        ))}
      </ol>
    </section>
  );
}
