import { isIP } from 'node:net';
import { hostname, networkInterfaces } from 'node:os';

/** By what phones may reach this machine: its name, with and without `.local`, its addresses, and what the yard calls it besides. */
export function namesOfThisMachine(besides: readonly string[] = []): string[] {
  const name = hostname().toLowerCase();
  const addresses = Object.values(networkInterfaces()).flatMap((all = []) =>
    all.filter(({ address }) => !address.includes('%') && !address.startsWith('fe80:')).map(({ address }) => address),
  );
  return [...new Set([...besides, ...(name.includes('.') ? [name] : [name, `${name}.local`]), 'localhost', ...addresses])];
}

export const isAddress = (name: string): boolean => isIP(name) !== 0;
