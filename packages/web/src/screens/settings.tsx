import { LANGUAGES, type Language } from '@clampwright/words/app';
import type { ReactNode } from 'react';
import { beginPractice } from '../job/practice.ts';
import { useSay } from '../language/speech.tsx';
import { Button, Check, Facts, Field, LinkButton, Page, Section } from '../ui/page.tsx';
import { change, type Settings, useSettings } from '../ui/settings.ts';
import { useJob } from '../ui/world-context.ts';

/** What this device is set to. */
export function SettingsScreen({ onLeavePractice }: { readonly onLeavePractice: () => void }) {
  const say = useSay();
  const { world } = useJob();
  const settings = useSettings();
  return (
    <Page title={say('settings.title')} back="/">
      <Choice
        label={say('settings.language')}
        value={settings.language}
        onChange={(language) => change({ language: language as Language })}
      >
        {Object.entries(LANGUAGES).map(([code, name]) => (
          <option key={code} value={code}>
            {name}
          </option>
        ))}
      </Choice>
      <Choice label={say('settings.theme')} value={settings.theme} onChange={(theme) => change({ theme: theme as Settings['theme'] })}>
        {(['system', 'light', 'dark'] as const).map((theme) => (
          <option key={theme} value={theme}>
            {say(`settings.theme-${theme}`)}
          </option>
        ))}
      </Choice>
      <Choice label={say('settings.guard')} value={settings.guard} onChange={(guard) => change({ guard: guard as Settings['guard'] })}>
        {(['hold', 'second'] as const).map((guard) => (
          <option key={guard} value={guard}>
            {say(`settings.guard-${guard}`)}
          </option>
        ))}
      </Choice>
      <div>
        {(['vibration', 'sound', 'speech'] as const).map((one) => (
          <Check key={one} label={say(`settings.${one}`)} checked={settings[one]} onChange={(on) => change({ [one]: on })} />
        ))}
      </div>
      <Section title={say('settings.device')}>
        <Facts
          facts={[
            [say('verify.device'), world.identity.name],
            ['', world.identity.device],
          ]}
        />
      </Section>
      {world.world === 'practice' ? (
        <>
          <Button kind="act" onClick={onLeavePractice}>
            {say('practice.leave')}
          </Button>
          <Button onClick={() => void beginPractice(world.db, say('practice.person')).then(() => location.assign('/'))}>
            {say('practice.afresh')}
          </Button>
        </>
      ) : null}
      {world.world === 'practice' ? null : <LinkButton href="/office">{say('office.title')}</LinkButton>}
      <LinkButton href="/verify">{say('enrol.verify')}</LinkButton>
    </Page>
  );
}

interface ChoiceProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly children: ReactNode;
}
const Choice = ({ label, value, onChange, children }: ChoiceProps) => (
  <Field label={label}>
    <select value={value} onChange={(event) => onChange(event.target.value)}>
      {children}
    </select>
  </Field>
);
