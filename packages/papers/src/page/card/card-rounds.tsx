import type { InteractionPlan } from '@clampwright/core';
import { ENGLISH_WORDS, label, type Words } from '@clampwright/words';
import { SettingText } from '../setting-text.tsx';
import { positionsText } from '../spoken.ts';
import { wayText } from '../way-text.ts';

/** The rounds to expect where bolts act on each other; settings bolt by bolt only where they differ, and why. */
export function CardRounds({ interaction, bolts }: { readonly interaction: InteractionPlan; readonly bolts: number }) {
  const { rounds, mode } = interaction;
  if (mode === 'one setting a round') return <p>{roundsText(interaction, bolts)}</p>;
  return (
    <div className="rounds">
      <p>
        <b>{label('interaction.card-several')}</b>
      </p>
      <ol>
        {rounds.map(({ way, settings }, at) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a round is its number
          <li key={at}>
            {wayText(way, bolts)}
            {settings.map(({ text, bolts: positions }) => (
              <span key={text} className="of-bolts">
                <b>
                  <SettingText text={text} />
                </b>{' '}
                {label('interaction.card-settings', { bolts: positionsText(positions) })}
              </span>
            ))}
          </li>
        ))}
      </ol>
    </div>
  );
}

/** One sentence: how many rounds, which way each, at which setting. */
export const roundsText = ({ rounds }: InteractionPlan, bolts: number, words: Words = ENGLISH_WORDS): string =>
  words.label('interaction.card-one', {
    rounds: rounds.length,
    list: rounds
      .map(({ way, settings }, at) =>
        words.label('interaction.card-round', {
          round: at + 1,
          way: wayText(way, bolts, words),
          setting: words.settingText(settings[0]!.text),
        }),
      )
      .join(' '),
  });
