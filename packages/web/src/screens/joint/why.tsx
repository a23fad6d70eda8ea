import { sourceText } from '@clampwright/words';
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
          [card.rule.title, card.rule.edition],
          [
            'F',
            `${tightening.meaning === 'at least' ? '≥ ' : ''}${trade.figure(tightening.target.value / 1000, 1)} kN · ${sourceText(tightening.target.source)}`,
          ],
          ['=', tightening.formula],
          ...(torque
            ? [['T', `${newtonMetre(torque.low)} … ${newtonMetre(torque.high)} · ${sourceText(plan.source)}`] as const]
            : [[step, sourceText(plan.source)] as const]),
          ...(setting ? [[setting.text, `${newtonMetre(setting.torque)}, ${setting.tool}`] as const] : []),
          ...(tightening.friction ? [['μ', `${tightening.friction.text} · ${sourceText(tightening.friction.source)}`] as const] : []),
        ]}
      />
    </details>
  );
}
