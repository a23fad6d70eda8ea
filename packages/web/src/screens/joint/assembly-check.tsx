import type { AssemblyCheck as Checked } from '@clampwright/core';
import { useState } from 'react';
import type { OpenJoint } from '../../job/open-joint.ts';
import { useSay, useTrade } from '../../language/speech.tsx';
import { Banner, Button, Check, Field, Section } from '../../ui/page.tsx';
import { useJob } from '../../ui/world-context.ts';

/** Which of the four findings of an assembly check each thing looked at belongs to. */
const PART: Partial<Record<Checked, 'washersRight' | 'nutMarkingOutward' | 'protrusionRight' | 'packingRight'>> = {
  'washer under the turned part': 'washersRight',
  'washer chamfer outward': 'washersRight',
  'bevel washers on slopes': 'washersRight',
  'no coating under washers': 'washersRight',
  'nut marking outward': 'nutMarkingOutward',
  'thread protrudes': 'protrusionRight',
  'clear threads in grip': 'protrusionRight',
};

/** Everything the rule set has looked at before the first bolt, ticked one by one; what is not ticked is not right. */
export function AssemblyCheck({ state: { joint, card }, disabled }: { readonly state: OpenJoint; readonly disabled: boolean }) {
  const say = useSay();
  const trade = useTrade();
  const { world, book } = useJob();
  const checks = card.checks.filter(({ check }) => check !== 'snug: firm contact');
  const [ticked, setTicked] = useState<ReadonlySet<Checked>>(new Set());
  const [text, setText] = useState('');
  const wrong = checks.filter(({ check }) => !ticked.has(check));
  if (joint.assembly?.passed)
    return (
      <Section title={say('joint.checks')}>
        <Banner level="fine">{say('joint.checks-fine')}</Banner>
      </Section>
    );
  const record = () => {
    const right = { washersRight: true, nutMarkingOutward: true, protrusionRight: true, packingRight: true };
    for (const { check } of wrong) right[PART[check] ?? 'packingRight'] = false;
    const told = [text.trim(), ...wrong.map(({ check }) => check)].filter((one) => one !== '').join('; ');
    void book.record('assembly-checked', { joint: joint.joint, ...right, ...(told === '' ? {} : { text: told }) }, world.holder);
  };
  return (
    <Section title={say('joint.checks')}>
      <div>
        {checks.map(({ check }) => (
          <Check
            key={check}
            label={trade.check(check)}
            checked={ticked.has(check)}
            onChange={(on) => setTicked(new Set(on ? [...ticked, check] : [...ticked].filter((one) => one !== check)))}
          />
        ))}
      </div>
      {joint.assembly?.passed === false ? <Banner level="stop">{say('joint.checks-wrong')}</Banner> : null}
      {wrong.length > 0 ? (
        <Field label={say('joint.checks-what')}>
          <input value={text} onChange={(event) => setText(event.target.value)} />
        </Field>
      ) : null}
      <Button kind={wrong.length > 0 ? 'stop' : 'plain'} disabled={disabled || (wrong.length > 0 && text.trim() === '')} onClick={record}>
        {say(wrong.length > 0 ? 'joint.checks-wrong' : 'joint.checks-fine')}
      </Button>
    </Section>
  );
}
