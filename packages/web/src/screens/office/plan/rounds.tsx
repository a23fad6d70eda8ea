import type { InteractionPlan, JointPlan, RoundPlan } from '@clampwright/core';
import { forceRing, forceStrips, positionsText, spoken, wayText } from '@clampwright/papers/screen';
import type { UnitSystem } from '@clampwright/words';
import { useState } from 'react';
import { useOffice } from '../../../language/office-speech.tsx';
import { useWords } from '../../../language/words.ts';
import { Banner, Section, Soft } from '../../../ui/page.tsx';
import css from './joint-page.module.css';
import { SceneView } from './scene-view.tsx';

interface RoundsProps {
  readonly joint: JointPlan;
  readonly interaction: InteractionPlan;
  readonly units: UnitSystem;
}

const sum = (rounds: readonly RoundPlan[], of: (round: RoundPlan) => number) => rounds.reduce((total, round) => total + of(round), 0);
const percent = (value: number) => ({ dimension: 'percent', value }) as const;

/** What each round does to every bolt: ours beside custom, star and then round and round until no nut moves. */
export function Rounds({ joint, interaction, units }: RoundsProps) {
  const say = useOffice();
  const words = useWords();
  const { label } = words;
  const [which, setWhich] = useState<'ours' | 'custom'>('ours');
  const { rounds, custom, target, wanted } = interaction;
  const shown = which === 'ours' ? rounds : custom;
  const last = rounds.at(-1)!;
  const against = { tag: joint.tag, target, wanted };
  return (
    <Section title={label('interaction.title')}>
      <p>{label('interaction.lead', { model: label(`interaction.model.${interaction.model}`) })}</p>
      {interaction.mode === 'several settings a round' ? (
        <Banner level="mind">
          {label(
            'interaction.several',
            { peak: { dimension: 'force', value: Math.max(...rounds.map(({ peak }) => peak)) as never } },
            units,
          )}
        </Banner>
      ) : null}
      <p>
        {label(
          'interaction.planned',
          {
            rounds: rounds.length,
            changes: sum(rounds, ({ changes }) => changes),
            minutes: Math.round(sum(rounds, ({ minutes }) => minutes)),
            energy: Math.round(sum(rounds, ({ energy }) => energy)),
            worst: percent(last.worst),
            target: { dimension: 'force', value: target },
            wanted: percent(wanted),
          },
          units,
        )}
      </p>
      <p>
        {label('interaction.custom', {
          rounds: custom.length,
          minutes: Math.round(sum(custom, ({ minutes }) => minutes)),
          worst: percent(custom.at(-1)!.worst),
        })}
      </p>
      <fieldset className={css.choice}>
        <legend>{say('bolt.rounds-of')}</legend>
        {(['ours', 'custom'] as const).map((one) => (
          <label key={one}>
            <input type="radio" name="rounds" checked={which === one} onChange={() => setWhich(one)} />
            {say(`bolt.rounds-${one}`)}
          </label>
        ))}
      </fieldset>
      <RoundTable joint={joint} rounds={shown} units={units} />
      <div className={css.pair}>
        <SceneView scene={forceStrips(shown, against, 130, words)} most="46rem" />
        {joint.layout.kind === 'ring' ? (
          <figure>
            <SceneView scene={forceRing(shown, against, joint.datum?.direction !== 'counter-clockwise', 80, words)} most="26rem" />
            <figcaption className={css.source}>{label('interaction.ring-key')}</figcaption>
          </figure>
        ) : null}
      </div>
      <Soft>{label('interaction.limits')}</Soft>
    </Section>
  );
}

function RoundTable({
  joint,
  rounds,
  units,
}: {
  readonly joint: JointPlan;
  readonly rounds: readonly RoundPlan[];
  readonly units: UnitSystem;
}) {
  const words = useWords();
  const { label, settingText } = words;
  const told = spoken(units, words);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls on a narrow screen, so the keyboard must reach it
    <section className={css.scroll} tabIndex={0} aria-label={label('interaction.title')}>
      <table className={css.steps}>
        <thead>
          <tr>
            {(['round', 'way', 'setting', 'forces', 'peak', 'worst', 'moving', 'minutes'] as const).map((one) => (
              <th key={one} scope="col">
                {label(`interaction.${one}`)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rounds.map(({ way, settings, force, peak, worst, pulls, minutes }, at) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: the index is the round
            <tr key={at}>
              <th scope="row">{at + 1}</th>
              <td>{wayText(way, joint.boltCount, words)}</td>
              <td>
                {settings.map(({ text, bolts }) => (
                  <span key={text}>
                    {settings.length > 1 ? `${label('joint.bolts', { positions: positionsText(bolts) })}: ` : ''}
                    <b>{settingText(text)}</b>{' '}
                  </span>
                ))}
              </td>
              <td>
                {label('interaction.range', {
                  least: told.force(Math.min(...force) as never),
                  greatest: told.force(Math.max(...force) as never),
                })}
              </td>
              <td>{told.force(peak)}</td>
              <td>{told.share(worst)}</td>
              <td>{pulls}</td>
              <td>{Math.round(minutes)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
