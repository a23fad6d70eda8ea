import { base32crockford } from '@scure/base';
import { digest } from './hash.ts';

/** What an id names, told by its first letter. */
const LETTER = { job: 'j', yard: 'y', joint: 'n', person: 'p', device: 'd', battery: 'b', lot: 'l' } as const;
type Named = keyof typeof LETTER;

/** 128 bits in 26 characters of Crockford's alphabet: no I, L, O, U to misread. */
const CHARACTERS = '[0-9a-hjkmnp-tv-z]{26}';

export const idPattern = (named: Named): RegExp => new RegExp(`^${LETTER[named]}-${CHARACTERS}$`);

/** The book of a job, or of the yard. */
export const BOOK_PATTERN = new RegExp(`^[${LETTER.job}${LETTER.yard}]-${CHARACTERS}$`);
export const DEVICE_PATTERN = idPattern('device');

/**
 * A permanent id of 16 random bytes. It says nothing: painted number, tag and name are attributes of what it names.
 *
 * @example
 * expect(idOf('joint', new Uint8Array(16))).toBe('n-00000000000000000000000000');
 */
export function idOf(named: Named, random: Uint8Array): string {
  if (random.length !== 16) throw new RangeError(`an id takes 16 random bytes, not ${random.length}`);
  return `${LETTER[named]}-${base32crockford.encode(random).toLowerCase().padStart(26, '0')}`;
}

/** A device is named by its key: a key that was put in its place has another name. */
export const deviceIdOf = (publicKey: Uint8Array): string => idOf('device', digest(publicKey).slice(0, 16));
