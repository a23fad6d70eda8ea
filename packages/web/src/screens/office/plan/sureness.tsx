import type { TighteningPlan } from '@clampwright/core';
import { preloadBell, preloadFacts, shareBars, spoken } from '@clampwright/papers/screen';
import type { UnitSystem } from '@clampwright/words';
import { useOffice } from '../../../language/office-speech.tsx';
import { useTrade } from '../../../language/speech.tsx';
import { useWords } from '../../../language/words.ts';
import { Facts } from '../../../ui/page.tsx';
import css from './joint-page.module.css';
import { SceneView } from './scene-view.tsx';
import { ToldFacts } from './told-facts.tsx';

/** 5 % to 95 % of a normal variable in standard deviations. */
const NINE_OF_TEN = 2 * 1.6448536269514722;

/** What decides the preload: its interval in its window, the shares of the scatter, give and angle; formulas and sources when they are asked for. */
export function Sureness({ tightening, units }: { readonly tightening: TighteningPlan; readonly units: UnitSystem }) {
  const say = useOffice();
  const { figure } = useTrade();
  const words = useWords();
  const { label } = words;
  const told = spoken(units, words);
  const details = DETAIL.map((key) => label(key));
  const { scatter, rotation, meaning, target, ceiling, steps, resilience } = tightening;
  const setting = steps.findLast((step) => step.setting)?.setting;
  const facts = preloadFacts(tightening, units, words);
  const chance = (of: number) => (of > 0.999 ? label('scatter.nearly') : label('scatter.chance', { chance: told.share(of) }));
  const window = label(meaning === 'at least' ? 'scatter.window' : 'scatter.below');
  return (
    <>
      <h3>{say('bolt.preload')}</h3>
      {/* what decides comes first; where a figure comes from is one touch away */}
      <ToldFacts
        facts={facts
          .filter(({ name }) => !details.includes(name))
          .map(({ name, text, leading }) => ({ name, text, ...(leading === undefined ? {} : { leading }) }))}
      />
      {scatter && setting ? (
        <>
          <Facts
            facts={[
              [label('scatter.one'), `${chance(scatter.one)}, ${window}`] as const,
              ...(scatter.bolts > 1 ? [[label('scatter.all', { bolts: scatter.bolts }), chance(scatter.all)] as const] : []),
              ...(rotation
                ? [
                    [
                      label('rotation.title'),
                      label('rotation.text', {
                        expected: told.angle(rotation.expected),
                        low: told.angle(rotation.low),
                        high: told.angle(rotation.high),
                      }),
                    ] as const,
                  ]
                : []),
              ...(resilience === undefined ? [] : [[say('bolt.give'), `${figure(resilience * 1e6, 3)} nm/N`] as const]),
            ]}
          />
          <div className={css.pair}>
            <SceneView
              most="34rem"
              scene={preloadBell(
                {
                  mean: setting.preload,
                  deviation: (setting.preloadHigh - setting.preloadLow) / NINE_OF_TEN,
                  say: (force: number) => told.force(force as typeof target.value),
                  ...(meaning === 'at least' ? { low: target.value } : {}),
                  ...(ceiling ? { high: ceiling.value } : {}),
                },
                90,
                words,
              )}
            />
            <SceneView most="40rem" scene={shareBars(scatter.shares, 110, words)} />
          </div>
        </>
      ) : null}
      <details>
        <summary>{say('bolt.formulas')}</summary>
        <ToldFacts facts={facts.filter(({ name, source }) => details.includes(name) || source !== undefined)} />
        {rotation ? <p className={css.source}>{words.cited({ value: rotation.expected, source: rotation.source })}</p> : null}
      </details>
    </>
  );
}

const DETAIL = ['preload.formula', 'preload.friction', 'preload.control', 'preload.above'] as const;
