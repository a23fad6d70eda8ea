/** State as JSON has it: maps and sets as lists. */
export const plain = (value: unknown): Record<string, unknown> =>
  JSON.parse(
    JSON.stringify(value, (_, one: unknown) => (one instanceof Map ? [...one.values()] : one instanceof Set ? [...one] : one)),
  ) as Record<string, unknown>;
