import type { Notice } from '@clampwright/core';
import type { Hash } from '../bytes/hash.ts';
import type { Told } from '../entry/kind.ts';

/** A contradiction in what was told. It stays until a named person settles it. */
export interface Found {
  /** what a settlement names: follows from code and entry, so every reader finds the same */
  readonly id: string;
  readonly notice: Notice;
  readonly entry: Hash;
}

export const foundIn = (hash: Hash, notice: Notice, part: string | number = ''): Found => ({
  id: `${notice.code}:${hash}${part === '' ? '' : `:${part}`}`,
  notice,
  entry: hash,
});

/** Adds a contradiction to a list of a draft. */
export const find = (list: Found[], told: Told, notice: Notice, part: string | number = ''): void => {
  list.push(foundIn(told.hash, notice, part));
};
