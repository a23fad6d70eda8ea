/** Without the entries that are undefined. */
export const stated = <T extends object>(entries: { readonly [K in keyof T]: T[K] | undefined }): T =>
  Object.fromEntries(Object.entries(entries).filter(([, value]) => value !== undefined)) as T;
