import { useSay } from '../language/speech.tsx';
import css from '../ui/page.module.css';
import { Banner, LinkButton } from '../ui/page.tsx';
import { useJob } from '../ui/world-context.ts';

/** Who holds the device; entries carry the name. */
export function HolderLine() {
  const say = useSay();
  const { world, book } = useJob();
  const name = world.holder === undefined ? undefined : (book.nameOf(world.holder) ?? world.holder);
  return (
    <Banner level={name === undefined ? 'mind' : 'plain'}>
      <div className={name === undefined ? undefined : css.beside}>
        <p>{name === undefined ? say('who.needed') : say('who.holds', { name })}</p>
        {world.world === 'practice' ? null : <LinkButton href="/who">{say(name === undefined ? 'who.title' : 'who.change')}</LinkButton>}
      </div>
    </Banner>
  );
}
