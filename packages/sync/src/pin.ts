import { utf8 } from '@clampwright/record';

/**
 * A PIN as an enrolled device may hold it, to name who acts while it is offline: PBKDF2 with HMAC-SHA-256 (RFC 8018). A PIN of four digits
 * can be found by trying them all, for whoever copies this off a device: it says who held the device, and no more (docs/proof.md).
 */
export interface PinCheck {
  readonly person: string;
  readonly salt: string;
  readonly iterations: number;
  readonly hash: string;
}

/** Common guidance for PBKDF2-HMAC-SHA-256 in 2023; from memory. */
const ITERATIONS = 600_000;

const hex = (bytes: Uint8Array) => [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
const unhex = (text: string) => Uint8Array.from(text.match(/../g) ?? [], (pair) => Number.parseInt(pair, 16));

async function derive(pin: string, salt: string, iterations: number): Promise<string> {
  const key = await crypto.subtle.importKey('raw', utf8(pin) as Uint8Array<ArrayBuffer>, 'PBKDF2', false, ['deriveBits']);
  return hex(new Uint8Array(await crypto.subtle.deriveBits({ name: 'PBKDF2', hash: 'SHA-256', salt: unhex(salt), iterations }, key, 256)));
}

export async function keepPin(person: string, pin: string): Promise<PinCheck> {
  const salt = hex(crypto.getRandomValues(new Uint8Array(16)));
  return { person, salt, iterations: ITERATIONS, hash: await derive(pin, salt, ITERATIONS) };
}

export const isPin = async (pin: string, { salt, iterations, hash }: PinCheck): Promise<boolean> =>
  (await derive(pin, salt, iterations)) === hash;
