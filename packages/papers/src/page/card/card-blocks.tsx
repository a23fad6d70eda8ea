import type { JointPlan } from '@clampwright/core';
import { cautionText, label, patternText, remedy, says, stepText, type UnitSystem } from '@clampwright/words';
import type { ReactNode } from 'react';
import { jointDrawing } from '../../drawing/index.ts';
import { SceneView } from '../scene-view.tsx';
import type { CardBlock } from './card-block.ts';
import { CardBolts, toolsOf } from './card-bolts.tsx';
import { CardHead } from './card-head.tsx';
import { CardRounds } from './card-rounds.tsx';
import { CardSteps } from './card-steps.tsx';
import { RecordFields } from './record-fields.tsx';
import { TickGrid } from './tick-grid.tsx';
import { boxedSteps } from './tick-layout.ts';

/** Width between the margins of A5, mm. */
const WIDTH = 132;

type Show = {
  readonly [K in CardBlock['kind']]: (block: Extract<CardBlock, { kind: K }>, joint: JointPlan, units: UnitSystem) => ReactNode;
};
const SHOW: Show = {
  head: (_, joint, units) => <CardHead joint={joint} units={units} />,
  reasons: ({ reasons }, _, units) => (
    <ul className="read-first">
      {reasons.map((reason) => (
        <li key={JSON.stringify(reason)}>
          <b>{says(reason, units)}</b> {remedy(reason, units)}
        </li>
      ))}
    </ul>
  ),
  bolts: (_, joint, units) => <CardBolts joint={joint} units={units} />,
  steps: ({ rows }, joint, units) => (
    <CardSteps rows={rows} units={units} severalTools={new Set(joint.subgroups.flatMap(toolsOf)).size > 1} />
  ),
  rounds: ({ interaction }, joint) => <CardRounds interaction={interaction} bolts={joint.boltCount} />,
  drawing: ({ height, overleaf }, joint) => (
    <>
      <SceneView scene={jointDrawing(joint, WIDTH, height, 'right')} millimetres />
      <p>
        <b>{label('card.sequence', { pattern: patternText(joint.sequence.pattern) })}.</b> {overleaf && label('card.list-back')}
      </p>
    </>
  ),
  ticks: ({ lines, perLine }, joint) => {
    const steps = boxedSteps(joint);
    return (
      <>
        <p>
          {label('card.list')}{' '}
          <b>{label('card.boxes', { steps: steps.map(({ name }, at) => `${at + 1} ${stepText(name)}`).join(', ') })}.</b>
          {joint.sequence.list.some(({ length }) => length > 1) && ` ${label('card.together')}`}
        </p>
        <TickGrid lines={lines} boxes={steps.map((_, at) => at + 1)} perLine={perLine} />
      </>
    );
  },
  checks: (_, joint) => (
    <div>
      <h2>{label('checks.title')}</h2>
      <ul className="checks">
        {joint.checks.map(({ check }) => (
          <li key={check}>
            <span className="check-box" /> {label(`checks.${check}`)}
          </li>
        ))}
      </ul>
    </div>
  ),
  cautions: ({ codes }) => (
    <div>
      <h2>{label('card.cautions')}</h2>
      <ul className="cautions">
        {codes.map((code) => (
          <li key={code}>{cautionText(code)}</li>
        ))}
      </ul>
    </div>
  ),
  record: (_, joint) => <RecordFields joint={joint} />,
};

/** One block of a card. */
export const showBlock = (block: CardBlock, joint: JointPlan, units: UnitSystem): ReactNode =>
  (SHOW[block.kind] as (one: CardBlock, joint: JointPlan, units: UnitSystem) => ReactNode)(block, joint, units);
