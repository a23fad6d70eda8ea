/** PostgreSQL and engines that speak like it: the transaction lost a race and may be run again, from its beginning. */
const LOST_RACE = new Set(['40001', '40P01']);
const ATTEMPTS = 8;

export async function retrying<T>(work: () => Promise<T>): Promise<T> {
  for (let attempt = 1; ; attempt += 1) {
    try {
      return await work();
    } catch (error) {
      if (attempt >= ATTEMPTS || !LOST_RACE.has((error as { code?: string }).code ?? '')) throw error;
      await new Promise((resolve) => setTimeout(resolve, 2 ** attempt));
    }
  }
}
