/** What passed and what failed, counted and said as it happens. */
export function openCount() {
  const counts = { passed: 0, failed: 0 };
  return {
    counts,
    check(name: string, ok: boolean, detail = ''): void {
      counts[ok ? 'passed' : 'failed'] += 1;
      if (!ok) console.log(`FAILED  ${name}${detail === '' ? '' : `: ${detail}`}`);
    },
    left(name: string, why: string): void {
      console.log(`left out: ${name} (${why})`);
    },
  };
}
export type Count = ReturnType<typeof openCount>;
