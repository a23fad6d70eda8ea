import { useState } from 'react';
import { useLocation } from 'wouter';
import type { OpenJoint } from '../../job/open-joint.ts';
import { useSay, useTrade } from '../../language/speech.tsx';
import { Banner, Button, Check, Field, Page, Section } from '../../ui/page.tsx';
import { useJob } from '../../ui/world-context.ts';

/** Bolts that were loosened: what was tightened before no longer counts. */
export function LoosenScreen({ state: { joint, card } }: { readonly state: OpenJoint }) {
  const say = useSay();
  const trade = useTrade();
  const { world, book } = useJob();
  const [, go] = useLocation();
  const [bolts, setBolts] = useState<ReadonlySet<number>>(new Set());
  const [reason, setReason] = useState('');
  const all = Array.from({ length: card.boltCount }, (_, i) => i + 1);
  const record = async () => {
    await book.record('loosened', { joint: joint.joint, bolts: [...bolts].sort((a, b) => a - b), reason: reason.trim() }, world.holder);
    go(`/joint/${joint.joint}`);
  };
  return (
    <Page title={say('loosen.title', { tag: joint.tag ?? '' })} back={`/joint/${joint.joint}`}>
      <Banner level="mind">
        <p>{say('loosen.text')}</p>
        {card.cautions.includes('pressure-isolated') ? <p>{trade.caution('pressure-isolated')}</p> : null}
        <p>{trade.caution('hands-off-arm')}</p>
      </Banner>
      <Section title={say('loosen.bolts')}>
        <div style={{ display: 'grid', gridTemplateColumns: 'repeat(auto-fill, minmax(6rem, 1fr))' }}>
          {all.map((bolt) => (
            <Check
              key={bolt}
              label={String(bolt)}
              checked={bolts.has(bolt)}
              onChange={(on) => setBolts(new Set(on ? [...bolts, bolt] : [...bolts].filter((one) => one !== bolt)))}
            />
          ))}
        </div>
      </Section>
      <Field label={say('loosen.reason')}>
        <input value={reason} onChange={(event) => setReason(event.target.value)} />
      </Field>
      <Button kind="stop" disabled={bolts.size === 0 || reason.trim() === '' || world.holder === undefined} onClick={() => void record()}>
        {say('loosen.record')}
      </Button>
    </Page>
  );
}
