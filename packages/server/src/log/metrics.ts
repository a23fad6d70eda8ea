/** Counts and times of a server, in the Prometheus text exposition format 0.0.4. */
export function openMetrics() {
  const requests = new Map<string, { count: number; ms: number }>();
  let entries = 0;
  return {
    request(endpoint: string, status: number, ms: number): void {
      const name = `endpoint="${endpoint}",status="${status}"`;
      const one = requests.get(name) ?? { count: 0, ms: 0 };
      requests.set(name, { count: one.count + 1, ms: one.ms + ms });
    },
    appended(count: number): void {
      entries += count;
    },
    text(now: { readonly listeners: number }): string {
      const lines = [
        '# TYPE clampwright_requests_total counter',
        ...[...requests].map(([name, { count }]) => `clampwright_requests_total{${name}} ${count}`),
        '# TYPE clampwright_request_seconds_total counter',
        ...[...requests].map(([name, { ms }]) => `clampwright_request_seconds_total{${name}} ${(ms / 1000).toFixed(6)}`),
        '# TYPE clampwright_entries_received_total counter',
        `clampwright_entries_received_total ${entries}`,
        '# TYPE clampwright_listeners gauge',
        `clampwright_listeners ${now.listeners}`,
        '# TYPE process_resident_memory_bytes gauge',
        `process_resident_memory_bytes ${process.memoryUsage.rss()}`,
      ];
      return `${lines.join('\n')}\n`;
    },
  };
}
export type Metrics = ReturnType<typeof openMetrics>;
