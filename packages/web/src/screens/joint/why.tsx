import type { BoltTask } from '../../job/next-bolt.ts';
import type { OpenJoint } from '../../job/open-joint.ts';
import { useSay, useTrade } from '../../language/speech.tsx';
import css from '../../ui/page.module.css';
import { Facts } from '../../ui/page.tsx';

/** Where the numbers of a bolt come from: formula, target, torque window, friction, each with its source. */
export function Why({ state: { card }, task }: { readonly state: OpenJoint; readonly task: BoltTask }) {
  const say = useSay();
  const trade = useTrade();
  const { bolt, plan, tool, setting } = task;
  const tightening = card.subgroups.find(({ positions }) => positions.includes(bolt))?.tightening;
  if (!tightening) return null;
  const { torque } = plan;
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
            : [[trade.step(plan.name), trade.source(plan.source)] as const]),
          ...(setting === undefined || task.torque === undefined
            ? []
            : [[trade.settingText(setting), `${newtonMetre(task.torque)}, ${tool}`] as const]),
          ...(tightening.friction ? [['μ', `${tightening.friction.text} · ${trade.source(tightening.friction.source)}`] as const] : []),
        ]}
      />
    </details>
  );
}
