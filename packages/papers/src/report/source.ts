import type { Fold, Receipt } from '@clampwright/record';

/** What a report is made from: a book of the log up to one size. */
export interface ReportSource {
  readonly job: string;
  readonly title: string;
  readonly site: string;
  readonly size: number;
  /** of the tree of all entries, hexadecimal */
  readonly root: string;
  /** signed note of the log over `size` and `root` */
  readonly checkpoint: string;
  readonly logKey: string;
  /** of exactly these entries */
  readonly fold: Fold;
  readonly rows: (from: number, limit: number) => Promise<readonly { readonly receipt: Receipt; readonly bytes: Uint8Array }[]>;
  /** bytes of an attachment; undefined where it was erased or never sent */
  readonly attachment: (hash: string) => Promise<Uint8Array | undefined>;
  /** last place of each device's chain that the device signed */
  readonly signedUpTo: ReadonlyMap<string, number>;
  readonly engine: string;
}
