import { useOffice } from '../../../language/office-speech.tsx';
import { Banner, LinkButton } from '../../../ui/page.tsx';
import { OfficeShell } from './office-shell.tsx';

/** A page of a draft, without one in hand. */
export function NoDraft({ title }: { readonly title: string }) {
  const say = useOffice();
  return (
    <OfficeShell title={title}>
      <Banner level="plain">{say('desk.none-text')}</Banner>
      <LinkButton href="/office" kind="act">
        {say('office.page-start')}
      </LinkButton>
    </OfficeShell>
  );
}
