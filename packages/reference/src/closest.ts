const words = (text: string) => new Set(text.toLowerCase().match(/[a-z0-9]+/g) ?? []);

/** The entry of a table whose words a row's words meet best: rows and tables name the same condition a little differently. */
export function closest<T>(entries: readonly T[], nameOf: (entry: T) => string, wanted: string): T | undefined {
  const asked = words(wanted);
  let best: { entry: T; score: number } | undefined;
  for (const entry of entries) {
    const own = words(nameOf(entry));
    const shared = [...own].filter((word) => asked.has(word)).length;
    const score = shared / (own.size + asked.size - shared);
    if (score > (best?.score ?? 0)) best = { entry, score };
  }
  return best?.entry;
}
