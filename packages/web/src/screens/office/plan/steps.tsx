import type { StepPlan, TighteningPlan } from '@clampwright/core';
import { aimText, bigText, spoken } from '@clampwright/papers/screen';
import type { UnitSystem } from '@clampwright/words';
import { useOffice } from '../../../language/office-speech.tsx';
import { useWords } from '../../../language/words.ts';
import css from './joint-page.module.css';

/** The steps of one subgroup: the setting largest, everything else beside it. */
export function Steps({ tightening, units }: { readonly tightening: TighteningPlan; readonly units: UnitSystem }) {
  const say = useOffice();
  const words = useWords();
  const { label } = words;
  const told = spoken(units, words);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls on a narrow screen, so the keyboard must reach it
    <section className={css.scroll} tabIndex={0} aria-label={say('bolt.steps')}>
      <table className={css.steps}>
        <thead>
          <tr>
            {(['step', 'setting', 'torque', 'end', 'reaction'] as const).map((one) => (
              <th key={one} scope="col">
                {say(`bolt.col-${one}`)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {tightening.steps.map((step) => (
            <tr key={step.name}>
              <th scope="row">
                {words.step(step.name)}
                <small>{label(`step.${step.order}`)}</small>
              </th>
              <td>
                <b className={css.big}>{bigText(step, units, words)}</b>
                <Beside step={step} units={units} />
              </td>
              <td>
                {step.torque || step.setting ? aimText(step, units, words) : ''}
                {step.torque ? (
                  <small>{label('step.window', { low: told.torque(step.torque.low), high: told.torque(step.torque.high) })}</small>
                ) : null}
              </td>
              <td>
                {words.end(step.end, units)}
                {step.end.kind === 'mark at angle' ? (
                  <small>{label('step.angle-window', { minus: told.angle(step.end.minus), plus: told.angle(step.end.plus) })}</small>
                ) : null}
                <small>{words.source(step.source)}</small>
              </td>
              <td>{step.setting?.reaction === undefined ? '' : told.force(step.setting.reaction)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function Beside({ step, units }: { readonly step: StepPlan; readonly units: UnitSystem }) {
  const words = useWords();
  const { label, settingText } = words;
  const { setting } = step;
  if (!setting) return step.end.kind === 'mark at angle' ? <small>{words.setting(step)}</small> : null;
  return (
    <>
      <small>
        {label('step.tool', { tool: setting.tool })}
        {setting.interpolated ? `, ${label('step.interpolated')}` : ''}
      </small>
      {setting.next ? (
        <small>
          {label('step.next', { setting: settingText(setting.next.text), torque: spoken(units, words).torque(setting.next.torque) })}
        </small>
      ) : null}
    </>
  );
}
