import type { TighteningPlan } from '@clampwright/core';
import { label, type UnitSystem } from '@clampwright/words';
import { preloadBell, shareBars } from '../drawing/scatter-plot.ts';
import { Facts } from './facts.tsx';
import { SceneView } from './scene-view.tsx';
import { spoken } from './spoken.ts';

/** 5 % to 95 % of a normal variable in standard deviations. */
const NINE_OF_TEN = 2 * 1.6448536269514722;

/** How sure the preload is, and what decides it; how far the part turns. */
export function Scatter({ tightening, units }: { readonly tightening: TighteningPlan; readonly units: UnitSystem }) {
  const say = spoken(units);
  const { scatter, rotation, meaning, target, ceiling, steps } = tightening;
  const setting = steps.findLast((step) => step.setting)?.setting;
  if (!scatter || !setting) return null;
  const [first] = scatter.shares;
  const chance = (of: number) => (of > 0.999 ? label('scatter.nearly') : label('scatter.chance', { chance: say.share(of) }));
  const window = label(meaning === 'at least' ? 'scatter.window' : 'scatter.below');
  const spread = {
    mean: setting.preload,
    deviation: (setting.preloadHigh - setting.preloadLow) / NINE_OF_TEN,
    say: (force: number) => say.force(force as typeof target.value),
    ...(meaning === 'at least' ? { low: target.value } : {}),
    ...(ceiling ? { high: ceiling.value } : {}),
  };
  return (
    <>
      <h3>{label('scatter.title')}</h3>
      <Facts
        facts={[
          [label('scatter.one'), `${chance(scatter.one)}, ${window}`],
          scatter.bolts > 1 && [label('scatter.all', { bolts: scatter.bolts }), chance(scatter.all)],
          rotation && [
            label('rotation.title'),
            `${label('rotation.text', { expected: say.angle(rotation.expected), low: say.angle(rotation.low), high: say.angle(rotation.high) })}${
              rotation.afterLead ? `; ${label('rotation.lead', { expected: say.angle(rotation.afterLead.expected) })}` : ''
            }`,
          ],
        ]}
      />
      {first && (
        <p className="lead">
          {label('scatter.decides', {
            source: sentence(label(`scatter.${first.source}`)),
            share: { dimension: 'percent', value: first.share },
          })}
        </p>
      )}
      <div className="pair">
        <SceneView scene={preloadBell(spread, 90)} />
        <SceneView scene={shareBars(scatter.shares, 110)} />
      </div>
    </>
  );
}

const sentence = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
