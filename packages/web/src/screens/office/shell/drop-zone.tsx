import type { ReactNode } from 'react';

interface DropProps {
  readonly className: string | undefined;
  readonly onDropped: (data: DataTransfer) => void;
  readonly children: ReactNode;
}

/** Where files may be dropped; whoever has no mouse chooses them by the button inside. */
export const DropZone = ({ className, onDropped, children }: DropProps) => (
  // biome-ignore lint/a11y/noStaticElementInteractions: dropping is a second way; the button inside is the first
  <section
    className={className}
    onDragOver={(event) => event.preventDefault()}
    onDrop={(event) => {
      event.preventDefault();
      onDropped(event.dataTransfer);
    }}
  >
    {children}
  </section>
);
