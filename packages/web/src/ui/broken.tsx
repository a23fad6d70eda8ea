import { Component, type ReactNode } from 'react';
import { useSay } from '../language/speech.tsx';
import { Button, Page } from './page.tsx';

/** A page that failed says so; what was recorded is safe. */
export class Broken extends Component<{ readonly children: ReactNode }, { readonly error?: Error }> {
  override state: { readonly error?: Error } = {};
  static getDerivedStateFromError(error: Error) {
    return { error };
  }
  override render() {
    return this.state.error ? <BrokenPage error={this.state.error} /> : this.props.children;
  }
}

function BrokenPage({ error }: { readonly error: Error }) {
  const say = useSay();
  return (
    <Page title={say('app.failed')}>
      <p>{say('app.failed-text')}</p>
      <p>
        <code>{error.message}</code>
      </p>
      <Button kind="act" onClick={() => location.reload()}>
        {say('app.again')}
      </Button>
    </Page>
  );
}
