import { done, notice, type Outcome, refused } from '@clampwright/core';
import { bytesToHex, hexToBytes } from '@noble/hashes/utils.js';
import { canonicalBytes, type Json, readCanonical } from '../bytes/canonical.ts';
import type { Hash } from '../bytes/hash.ts';
import { deviceIdOf } from '../bytes/id.ts';
import { isSignedBy, type KeyPair, sign } from '../bytes/keys.ts';
import { field, z } from '../entry/field.ts';

/** A device's word for its chain up to and including one entry. */
export const head = z.strictObject({
  job: field.book,
  device: field.device,
  sequence: field.count,
  hash: field.hash,
  /** Ed25519, over the canonical bytes of the other fields under the name `clampwright-head-1` */
  signature: z.string().check(z.regex(/^[0-9a-f]{128}$/)),
});
export type SignedHead = Readonly<z.infer<typeof head>>;
type Head = Omit<SignedHead, 'signature'>;

const messageOf = ({ job, device, sequence, hash }: Head) => canonicalBytes({ format: 'clampwright-head-1', job, device, sequence, hash });

export const signHead = (one: { job: string; device: string; sequence: number; hash: Hash }, keys: KeyPair): SignedHead => ({
  ...one,
  signature: bytesToHex(sign(messageOf(one), keys)),
});

export function readHead(bytes: Uint8Array): Outcome<SignedHead> {
  const value = readCanonical(bytes);
  if (!value.ok) return value;
  const read = head.safeParse(value.value);
  return read.success
    ? done(read.data)
    : refused(...read.error.issues.map(({ path }) => notice('head-malformed', { field: path.join('.') || 'head' })));
}

export const headBytes = (one: SignedHead): Uint8Array => canonicalBytes(one as Json);

/** Is the head signed with this key, and is it the key the device is named after? */
export function checkHead(one: SignedHead, publicKey: Uint8Array): Outcome<SignedHead> {
  if (deviceIdOf(publicKey) !== one.device) return refused(notice('key-of-another-device', { device: one.device }));
  return isSignedBy(messageOf(one), hexToBytes(one.signature), publicKey)
    ? done(one)
    : refused(notice('head-not-signed', { device: one.device, sequence: one.sequence }));
}
