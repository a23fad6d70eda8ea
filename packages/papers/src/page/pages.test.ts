import { describe, expect, test } from 'vitest';
import { SPLICE, testPlan } from '../test-plan.ts';
import { layCard } from './card/card-layout.ts';
import { cardsHtml } from './index.tsx';

const plan = testPlan();
const plain = (html: string) =>
  html
    .replace(/&#x27;|&#39;/g, '’')
    .replace(/&amp;/g, '&')
    .replace(/\u00a0/g, ' ');

describe('bolting cards', () => {
  test('the card shows every setting the plan chose', () => {
    for (const joint of plan.joints.filter(({ verdict }) => verdict !== 'stop')) {
      const cards = plain(cardsHtml(plan, { tags: [joint.tag] }));
      const settings = joint.subgroups.flatMap(({ tightening }) =>
        (tightening?.steps ?? []).flatMap(({ setting }) => (setting ? [setting.text] : [])),
      );
      for (const setting of settings) expect(cards).toContain(setting);
    }
  });
  test('a joint that stops gets a card that says so, without a setting', () => {
    const stopped = plan.joints.filter(({ verdict }) => verdict === 'stop');
    expect(stopped.length).toBeGreaterThan(0);
    for (const { tag } of stopped) {
      const card = cardsHtml(plan, { tags: [tag] });
      expect(card).toMatch(/do not tighten/i);
      expect(card).not.toMatch(/gear \d, step \d/);
    }
  });
  test('nothing on a card is undefined, not a number, or a script', () => {
    expect(cardsHtml(plan, {})).not.toMatch(/>[^<]*(undefined|NaN|\[object)|<script/);
  });
  test('a name with markup stays text', () => {
    const html = cardsHtml(testPlan([{ ...SPLICE, title: '<script>alert(1)</script>' }]));
    expect(html).not.toContain('<script>');
    expect(html).toContain('&lt;script&gt;');
  });
  test('the card has a place to tick every bolt once', () => {
    for (const joint of plan.joints) {
      const blocks = layCard(joint, plan.job.units).flat();
      const bolts = blocks.flatMap((block) => (block.kind === 'ticks' ? block.lines.flat().map(({ bolt }) => bolt) : []));
      expect([...bolts].sort((a, b) => a - b)).toEqual(Array.from({ length: joint.boltCount }, (_, i) => i + 1));
    }
  });
});
