import { useOffice } from '../../../language/office-speech.tsx';
import { useNotice } from '../../../language/speech.tsx';
import { Banner } from '../../../ui/page.tsx';
import type { Fault } from './session.ts';

export function FaultLine({ fault }: { readonly fault: Fault }) {
  const say = useOffice();
  const { says, remedy } = useNotice();
  if (fault === undefined) return null;
  return (
    <Banner level="stop">
      {fault === 'unreachable' ? (
        <p>{say('office.unreachable')}</p>
      ) : (
        fault.map((one) => (
          <p key={one.code}>
            {says(one)} {remedy(one)}
          </p>
        ))
      )}
    </Banner>
  );
}
