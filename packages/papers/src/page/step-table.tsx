import type { StepPlan, TighteningPlan } from '@clampwright/core';
import { endText, label, settingLine, sourceText, stepText, type UnitSystem } from '@clampwright/words';
import { DataTable } from './data-table.tsx';
import { SettingText } from './setting-text.tsx';
import { spoken } from './spoken.ts';

/** The steps of one subgroup: the setting largest, everything else beside it. */
export function StepTable({
  tightening,
  units,
  name,
}: {
  readonly tightening: TighteningPlan;
  readonly units: UnitSystem;
  readonly name: string;
}) {
  const say = spoken(units);
  return (
    <DataTable
      label={name}
      className="steps"
      rows={tightening.steps}
      keyOf={(step) => step.name}
      columns={[
        {
          head: label('col.step'),
          cell: (step) => (
            <>
              {stepText(step.name)}
              <span className="minor">{label(`step.${step.order}`)}</span>
            </>
          ),
        },
        { head: label('col.setting'), cell: (step) => <Setting step={step} units={units} /> },
        {
          head: label('col.torque'),
          cell: ({ torque, setting }) =>
            torque && (
              <>
                {label(setting ? 'step.chart' : 'step.wanted', { torque: say.torque(setting?.torque ?? torque.wanted) })}
                <span className="minor">{label('step.window', { low: say.torque(torque.low), high: say.torque(torque.high) })}</span>
              </>
            ),
        },
        {
          head: label('col.end'),
          cell: (step) => (
            <>
              {endText(step.end, units)}
              {step.end.kind === 'mark at angle' && (
                <span className="minor">
                  {label('step.angle-window', { minus: say.angle(step.end.minus), plus: say.angle(step.end.plus) })}
                </span>
              )}
              <span className="minor">{sourceText(step.source)}</span>
            </>
          ),
        },
        { head: label('col.reaction'), cell: ({ setting }) => setting?.reaction !== undefined && say.force(setting.reaction) },
      ]}
    />
  );
}

function Setting({ step, units }: { readonly step: StepPlan; readonly units: UnitSystem }) {
  const { setting, end } = step;
  const say = spoken(units);
  if (!setting)
    return (
      <>
        {end.kind === 'mark at angle' && <strong className="big">{say.angle(end.angle)}</strong>}
        <span className="no-setting">{settingLine(step)}</span>
      </>
    );
  return (
    <>
      <strong className="big">
        <SettingText text={settingLine(step)} />
      </strong>
      <span className="minor">
        {label('step.tool', { tool: setting.tool })}
        {setting.interpolated && `, ${label('step.interpolated')}`}
      </span>
      {setting.next && (
        <span className="minor">{label('step.next', { setting: setting.next.text, torque: say.torque(setting.next.torque) })}</span>
      )}
    </>
  );
}
