import { type InteractionPlan, type JointPlan, N, type RoundPlan } from '@clampwright/core';
import { label, type UnitSystem } from '@clampwright/words';
import { forceRing, forceStrips } from '../drawing/force-plot.ts';
import { DataTable } from './data-table.tsx';
import { SceneView } from './scene-view.tsx';
import { positionsText, spoken } from './spoken.ts';
import { wayText } from './way-text.ts';

const sum = (rounds: readonly RoundPlan[], of: (round: RoundPlan) => number) => rounds.reduce((total, round) => total + of(round), 0);
const percent = (value: number) => ({ dimension: 'percent', value }) as const;

/** What each round does to every bolt, beside custom. */
export function Interaction({
  joint,
  interaction,
  units,
}: {
  readonly joint: JointPlan;
  readonly interaction: InteractionPlan;
  readonly units: UnitSystem;
}) {
  const say = spoken(units);
  const { rounds, custom, target, wanted } = interaction;
  const last = rounds.at(-1)!;
  const against = { tag: joint.tag, target, wanted };
  return (
    <section className="interaction">
      <h2>{label('interaction.title')}</h2>
      <p className="lead">{label('interaction.lead', { model: label(`interaction.model.${interaction.model}`) })}</p>
      {interaction.mode === 'several settings a round' && (
        <p>
          <b>{label('interaction.several', { peak: { dimension: 'force', value: peakOf(rounds) } }, units)}</b>
        </p>
      )}
      <DataTable
        label={label('interaction.title')}
        rows={rounds.map((round, at) => ({ ...round, number: at + 1 }))}
        keyOf={({ number }) => String(number)}
        columns={[
          { head: label('interaction.round'), cell: ({ number }) => number },
          { head: label('interaction.way'), cell: ({ way }) => wayText(way, joint.boltCount) },
          {
            head: label('interaction.setting'),
            cell: ({ settings }) =>
              settings.map(({ text, bolts }) => (
                <span key={text} className="of-bolts">
                  {settings.length > 1 && `${label('joint.bolts', { positions: positionsText(bolts) })}: `}
                  <b>{text}</b>
                </span>
              )),
          },
          {
            head: label('interaction.forces'),
            cell: ({ force }) =>
              label('interaction.range', {
                least: say.force(Math.min(...force) as typeof target),
                greatest: say.force(Math.max(...force) as typeof target),
              }),
            figures: true,
          },
          { head: label('interaction.peak'), cell: ({ peak }) => say.force(peak), figures: true },
          { head: label('interaction.worst'), cell: ({ worst }) => say.share(worst), figures: true },
          { head: label('interaction.moving'), cell: ({ pulls }) => pulls, figures: true },
          { head: label('interaction.minutes'), cell: ({ minutes }) => Math.round(minutes), figures: true },
        ]}
      />
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
      <div className="pair">
        <SceneView scene={forceStrips(rounds, against, 130)} />
        {joint.layout.kind === 'ring' && (
          <figure>
            <SceneView scene={forceRing(rounds, against, joint.datum?.direction !== 'counter-clockwise', 80)} />
            <figcaption className="minor">{label('interaction.ring-key')}</figcaption>
          </figure>
        )}
      </div>
      <p className="minor">{label('interaction.limits')}</p>
    </section>
  );
}

const peakOf = (rounds: readonly RoundPlan[]) => N(Math.max(...rounds.map(({ peak }) => peak)));
