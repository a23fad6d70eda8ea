import { foldBench, verifyBench } from './log-record.ts';
import { logServerBench } from './log-server.ts';
import { logStoreBench } from './log-store.ts';

/** The bolting log: appended, served, folded, verified. */
export async function logBench(): Promise<void> {
  console.log('\nthe bolting log');
  await logStoreBench();
  await logServerBench();
  foldBench();
  await verifyBench();
}
