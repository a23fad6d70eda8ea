import type { Store } from '@clampwright/store';
import { SERVER } from './log-key.ts';

/** An enrolled device: its key, and the digest of the token it shows with every request. */
export interface DeviceRecord {
  readonly key: string;
  readonly name: string;
  readonly token: string;
  /** books it takes part in */
  readonly books: readonly string[];
  readonly enrolled: string;
  readonly revoked?: string;
}

export const deviceRecord = (store: Store, device: string): Promise<DeviceRecord | undefined> => store.access.get(SERVER, 'device', device);
