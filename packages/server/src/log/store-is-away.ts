/** Disk full, disk read-only, disk failing, file locked by a stranger. */
const SQLITE = /^SQLITE_(FULL|READONLY|IOERR|CANTOPEN|BUSY|LOCKED|NOMEM)/;
/** PostgreSQL: connection exceptions, shut down, too many connections, disk full, read-only. */
const POSTGRES = /^(08\w{3}|57P0[123]|53\w{3}|58\w{3}|25006)$/;
const NETWORK = new Set([
  'ECONNREFUSED',
  'ECONNRESET',
  'EPIPE',
  'ETIMEDOUT',
  'ENOTFOUND',
  'EHOSTUNREACH',
  'EAI_AGAIN',
  'ENOSPC',
  'EROFS',
  'EIO',
]);
const DRIVER = /Connection terminated|timeout exceeded when trying to connect|Client has encountered a connection error/;

/** Is it the store that does not answer, and not a defect of ours? Then the question may be asked again later. */
export function storeIsAway(error: unknown): boolean {
  const { code, message } = error as { code?: unknown; message?: unknown };
  const name = typeof code === 'string' ? code : '';
  return SQLITE.test(name) || POSTGRES.test(name) || NETWORK.has(name) || (typeof message === 'string' && DRIVER.test(message));
}
