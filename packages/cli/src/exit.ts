/** For scripts: everything can be carried out / some joints stop or rows were faulty / nothing could be done. */
export const EXIT = { fine: 0, stops: 1, unusable: 2 } as const;

/** Says on standard error why nothing can be done. */
export function refuse(text: string): number {
  process.stderr.write(`${text}\n`);
  return EXIT.unusable;
}
