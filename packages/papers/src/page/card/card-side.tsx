import type { JointPlan, Plan } from '@clampwright/core';
import { label } from '@clampwright/words';
import type { ReactNode } from 'react';

interface CardSideProps {
  readonly plan: Plan;
  readonly joint: JointPlan;
  readonly side: number;
  readonly sides: number;
  readonly className?: string;
  readonly children: ReactNode;
}

/** One side of a card; the tag stands large on every one, so that no sheet is ever without its joint. */
export function CardSide({ plan, joint, side, sides, className, children }: CardSideProps) {
  const { job, engine } = plan;
  const Tag = side === 1 ? 'h1' : 'p';
  return (
    <article className={`side ${className ?? ''}`} aria-label={`${joint.tag}, ${label('card.side', { side, sides })}`}>
      <header className="side-head">
        <Tag className="tag">{joint.tag}</Tag>
        <p className="where">
          {label('card.name')}
          <br />
          {label('card.side', { side, sides })}
        </p>
        {side === 1 && <p className="title">{joint.title}</p>}
        <p className="job">
          {side === 1 && `${joint.rule.title} · `}
          {label('card.plan', { job: job.title, date: job.workDate, engine })}
        </p>
      </header>
      {children}
    </article>
  );
}
