import type { OpenJoint } from '../../job/open-joint.ts';
import { useSay, useTrade } from '../../language/speech.tsx';
import css from '../../ui/page.module.css';
import { Facts } from '../../ui/page.tsx';

/** Where the numbers of a bolt come from: formula, target, torque window, friction, each with its source. */
export function Why({ state: { card }, bolt, step }: { readonly state: OpenJoint; readonly bolt: number; readonly step: string }) {
  const say = useSay();
  const trade = useTrade();
  const tightening = card.subgroups.find(({ positions }) => positions.includes(bolt))?.tightening;
  const plan = tightening?.steps.find(({ name }) => name === step);
  if (!tightening || !plan) return null;
  const { torque, setting } = plan;
  const newtonMetre = (value: number) => `${trade.figure(value / 1000, 0)} N·m`;
  return (
    <details>
      <summary className={css.item}>{say('app.why')}</summary>
      <Facts
        facts={[
          [trade.rule(card.rule.title), card.rule.edition],
          [
            'F',
            `${tightening.meaning === 'at least' ? '≥ ' : ''}${trade.figure(tightening.target.value / 1000, 1)} kN · ${trade.source(tightening.target.source)}`,
          ],
          ['=', tightening.formula],
          ...(torque
            ? [['T', `${newtonMetre(torque.low)} … ${newtonMetre(torque.high)} · ${trade.source(plan.source)}`] as const]
            : [[trade.step(step), trade.source(plan.source)] as const]),
          ...(setting ? [[trade.settingText(setting.text), `${newtonMetre(setting.torque)}, ${setting.tool}`] as const] : []),
          ...(tightening.friction ? [['μ', `${tightening.friction.text} · ${trade.source(tightening.friction.source)}`] as const] : []),
        ]}
      />
    </details>
  );
}
