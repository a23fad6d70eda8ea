import { label } from '@clampwright/words';

export function PageFoot({ engine }: { readonly engine: string }) {
  return (
    <footer>
      <p>{label('page.limits')}</p>
      <p>{label('page.engine', { engine })}</p>
    </footer>
  );
}
