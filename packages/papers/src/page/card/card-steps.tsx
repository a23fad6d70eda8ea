import type { StepPlan } from '@clampwright/core';
import { endText, label, settingLine, stepText, type UnitSystem } from '@clampwright/words';
import { SettingText } from '../setting-text.tsx';
import { positionsText, spoken } from '../spoken.ts';
import type { CardRow } from './card-rows.ts';

interface CardStepsProps {
  readonly rows: readonly CardRow[];
  readonly units: UnitSystem;
  /** bolts of the joint get different settings, or more than one tool is used: each line says which */
  readonly severalTools: boolean;
}

/** The steps in working order; the setting is the largest thing on the card. */
export function CardSteps({ rows, units, severalTools }: CardStepsProps) {
  return (
    <div className="steps">
      {rows.map(({ number, name, order, settings }) => (
        <div className="step" key={name}>
          <p className="name">
            {number} {stepText(name)}
            {order === 'circular' && <small>{label('step.circular')}</small>}
          </p>
          <div>
            {settings.map(({ positions, step }, at) => (
              <div className="set" key={positions[0]}>
                {settings.length > 1 && <b className="which">{label('joint.bolts', { positions: positionsText(positions) })}</b>}
                <Big step={step} units={units} />
                <span className="beside">
                  {[
                    step.torque && spoken(units).torque(step.setting?.torque ?? step.torque.wanted),
                    severalTools && step.setting && label('step.tool', { tool: step.setting.tool }),
                  ]
                    .filter(Boolean)
                    .join(', ')}
                </span>
                {endOf(step, units) !== endOf(settings[at + 1]?.step, units) && <span className="until">{endOf(step, units)}</span>}
              </div>
            ))}
          </div>
          <span className="box" title={label('card.step-done')} />
        </div>
      ))}
    </div>
  );
}

const endOf = (step: StepPlan | undefined, units: UnitSystem) => step && endText(step.end, units);

function Big({ step, units }: { readonly step: StepPlan; readonly units: UnitSystem }) {
  if (step.setting)
    return (
      <strong className="big">
        <SettingText text={settingLine(step)} />
      </strong>
    );
  return (
    <>
      {step.end.kind === 'mark at angle' && <strong className="big">{spoken(units).angle(step.end.angle)}</strong>}
      <strong className="no">{settingLine(step)}</strong>
    </>
  );
}
