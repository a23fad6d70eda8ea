import { useEffect, useState } from 'react';
import { Link, useLocation } from 'wouter';
import { desk } from '../../../draft/desk.ts';
import { useWatched } from '../../../job/store.ts';
import { useOffice } from '../../../language/office-speech.tsx';
import { useNotice, useTrade } from '../../../language/speech.tsx';
import { useWords } from '../../../language/words.ts';
import { engine, planning } from '../../../planning/planning.ts';
import type { ToMend, Way } from '../../../planning/view.ts';
import { Button, Section, Soft } from '../../../ui/page.tsx';
import { usePrinting } from '../../../ui/printing.ts';
import css from './fix-first.module.css';
import { placeOf, SAID_AT_ONCE, setField } from './remedies.ts';

const MOST_THINGS = 6;
const MOST_TAGS = 12;

/** What to mend before anybody goes out, each thing once: in words, and with what would mend it as a button. */
export function FixFirst({ things }: { readonly things: readonly ToMend[] }) {
  const say = useOffice();
  const printing = usePrinting();
  const [asked, setAll] = useState(false);
  const all = asked || printing;
  const shown = all ? things : things.slice(0, MOST_THINGS);
  return (
    <Section title={say('sheet.fix-first')}>
      <Soft>{say(things.length > 0 ? 'sheet.fix-lead' : 'sheet.fix-none')}</Soft>
      <ol className={css.mend}>
        {shown.map((one) => (
          <Thing key={one.key} thing={one} />
        ))}
      </ol>
      {things.length > shown.length ? (
        <Button kind="quiet" onClick={() => setAll(true)}>
          {say('sheet.fix-more', { count: things.length - shown.length })}
        </Button>
      ) : null}
    </Section>
  );
}

function Thing({ thing }: { readonly thing: ToMend }) {
  const say = useOffice();
  const [, goTo] = useLocation();
  const ways = useWays(thing);
  const atOnce = SAID_AT_ONCE[thing.notices[0]!.code];
  const { says, remedy } = useNotice();
  const { rule } = useTrade();
  const { label } = useWords();
  const units = useWatched(planning).view?.job?.units ?? 'metric';
  const place = placeOf({ notice: thing.notices[0]!, tags: thing.tags });
  return (
    <li data-level={thing.level}>
      <p className={css.level}>{label(`level.${thing.level}`)}</p>
      <div className={css.what}>
        <p className={css.remedy}>{remedy(thing.notices[0]!, units)}</p>
        {thing.notices.map((one) => (
          <p key={JSON.stringify(one)}>{says(one, units)}</p>
        ))}
        <p className={css.tags}>
          {thing.tags.length === 0 ? say('sheet.whole-job') : say('sheet.helps', { count: thing.tags.length })}{' '}
          {thing.tags.slice(0, MOST_TAGS).map((tag) => (
            <Link key={tag} href={`/office/plan/${encodeURIComponent(tag)}`}>
              {tag}
            </Link>
          ))}
          {thing.tags.length > MOST_TAGS ? ' …' : ''}
        </p>
      </div>
      <div className={css.do}>
        {atOnce ? (
          <Button kind="act" onClick={atOnce.run}>
            {say(atOnce.label)}
          </Button>
        ) : null}
        {ways.map((way) => (
          <Button
            key={way.kind === 'tool' ? way.serial : way.rule}
            kind="act"
            onClick={() => setField(way.kind === 'tool' ? 'tools' : 'rule', way.tags, way.kind === 'tool' ? way.serial : way.rule)}
          >
            {way.kind === 'tool' ? say('sheet.with-tool', { serial: way.serial }) : say('sheet.by-rule', { rule: rule(way.title) })}
            {way.tags.length < thing.tags.length || thing.tags.length === 1
              ? ` (${way.tags.slice(0, 3).join(', ')}${way.tags.length > 3 ? ' …' : ''})`
              : ''}
          </Button>
        ))}
        <Button
          onClick={() => {
            place.prepare();
            goTo(place.href);
          }}
        >
          {say('sheet.mend-there')}
        </Button>
      </div>
    </li>
  );
}

/** Ways that help the joints that were tried are offered for all of them. */
function useWays({ level, notices, tags }: ToMend): readonly Way[] {
  const [ways, setWays] = useState<readonly Way[]>([]);
  const wanted = (level === 'stop' || level === 'hold') && tags.length > 0;
  const { code } = notices[0]!;
  const key = tags.join('\n');
  // biome-ignore lint/correctness/useExhaustiveDependencies: the tags are one thing by their text
  useEffect(() => {
    if (!wanted) return;
    let asked = true;
    void engine.ways(code, tags).then((found) => {
      if (!asked || planning.get().files !== desk.get()?.draft.files) return;
      setWays(found.map((way) => (way.all ? { ...way, tags } : way)));
    });
    return () => {
      asked = false;
    };
  }, [wanted, code, key]);
  return wanted ? ways : [];
}
