/** So many in so long, for everyone of a name: tokens that fill up again with time. Kept in memory: a restart forgives. */
export function rateLimit({ most, seconds, now }: { readonly most: number; readonly seconds: number; readonly now: () => Date }) {
  const buckets = new Map<string, { tokens: number; at: number }>();
  const perMs = most / (seconds * 1000);
  return {
    /** 0 when it may go on; else the seconds to wait */
    take(name: string): number {
      const at = now().getTime();
      const bucket = buckets.get(name) ?? { tokens: most, at };
      const tokens = Math.min(most, bucket.tokens + Math.max(0, at - bucket.at) * perMs);
      const left = tokens >= 1 ? tokens - 1 : tokens;
      buckets.set(name, { tokens: left, at });
      if (buckets.size > 10_000) for (const [key, one] of buckets) if (one.tokens + (at - one.at) * perMs >= most) buckets.delete(key);
      return tokens >= 1 ? 0 : Math.ceil((1 - tokens) / perMs / 1000);
    },
  };
}
export type RateLimit = ReturnType<typeof rateLimit>;
