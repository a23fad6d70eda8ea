import { watched } from '../../../job/store.ts';

/** A joint list or a model that was dropped, and is looked at before it is taken. */
export const incoming = watched<
  | {
      readonly kind: 'list' | 'model';
      readonly name: string;
      readonly bytes: Uint8Array;
      /** the draft it is for; a new one where there is none */
      readonly into: string | undefined;
    }
  | undefined
>(undefined);
