import { ed25519 } from '@noble/curves/ed25519.js';

/** Ed25519 (RFC 8032): 32 secret bytes and the public key that follows from them. */
export interface KeyPair {
  readonly secret: Uint8Array;
  readonly publicKey: Uint8Array;
}

export function keyPairOf(secret: Uint8Array): KeyPair {
  if (secret.length !== 32) throw new RangeError(`a key is made of 32 random bytes, not ${secret.length}`);
  return { secret, publicKey: ed25519.getPublicKey(secret) };
}

export const sign = (message: Uint8Array, { secret }: KeyPair): Uint8Array => ed25519.sign(message, secret);

/** Strict verification: no malleable encodings, no points of small order (RFC 8032 without the leniency of ZIP 215). */
export function isSignedBy(message: Uint8Array, signature: Uint8Array, publicKey: Uint8Array): boolean {
  if (signature.length !== 64 || publicKey.length !== 32) return false;
  try {
    return ed25519.verify(signature, message, publicKey, { zip215: false });
  } catch {
    return false;
  }
}
