import { BlockList } from 'node:net';
import { Extension } from '@peculiar/x509';
import { isAddress } from './names.ts';

/** Where a yard's own authority may speak for anybody: names and addresses that no public authority gives out. */
const PRIVATE_NAMES = ['localhost', 'local', 'lan', 'internal', 'home.arpa', 'test'];
const PRIVATE_ADDRESSES = [
  ['10.0.0.0', 8],
  ['172.16.0.0', 12],
  ['192.168.0.0', 16],
  ['169.254.0.0', 16],
  ['127.0.0.0', 8],
  ['fc00::', 7],
  ['fe80::', 10],
  ['::1', 128],
] as const;

const PRIVATE = new BlockList();
for (const [address, bits] of PRIVATE_ADDRESSES) PRIVATE.addSubnet(address, bits, family(address));

/** Would phones accept a certificate for this name? `besides`: what the authority was made for. */
export function mayCertify(name: string, besides: readonly string[]): boolean {
  if (isAddress(name)) return PRIVATE.check(name, family(name));
  return [...PRIVATE_NAMES, ...besides].some((one) => name === one || name.endsWith(`.${one}`));
}
const NAME_CONSTRAINTS = '2.5.29.30';
const [SEQUENCE, PERMITTED, DNS_NAME, IP_ADDRESS] = [0x30, 0xa0, 0x82, 0x87];

/**
 * What the authority may certify: private addresses and names, and the names it was made for. A phone that trusts it trusts it for
 * nothing else: whoever steals its key cannot pose as any public site. Source: RFC 5280, 4.2.1.10.
 */
export function nameConstraints(names: readonly string[]): Extension {
  const text = new TextEncoder();
  const dns = [...new Set([...PRIVATE_NAMES, ...names])].map((name) => der(DNS_NAME, text.encode(name)));
  const addresses = PRIVATE_ADDRESSES.map(([address, bits]) => der(IP_ADDRESS, addressBytes(address), maskBytes(bits, family(address))));
  const subtrees = [...dns, ...addresses].map((base) => der(SEQUENCE, base));
  return new Extension(NAME_CONSTRAINTS, true, der(SEQUENCE, der(PERMITTED, ...subtrees)));
}

function family(address: string): 'ipv4' | 'ipv6' {
  return address.includes(':') ? 'ipv6' : 'ipv4';
}

/** Four bytes, or sixteen of an address whose groups end in `::` or are `::1`. */
function addressBytes(address: string): Uint8Array {
  if (family(address) === 'ipv4') return Uint8Array.from(address.split('.'), Number);
  const bytes = new Uint8Array(16);
  if (address === '::1') bytes[15] = 1;
  else {
    const first = Number.parseInt(address, 16);
    bytes[0] = first >> 8;
    bytes[1] = first & 255;
  }
  return bytes;
}

const maskBytes = (bits: number, kind: 'ipv4' | 'ipv6'): Uint8Array =>
  Uint8Array.from({ length: kind === 'ipv4' ? 4 : 16 }, (_, i) => 255 & ~(255 >> Math.min(8, Math.max(0, bits - 8 * i))));

/** One value in the distinguished encoding (ITU-T X.690) of less than 64 KiB. */
function der(tag: number, ...parts: readonly Uint8Array[]): Uint8Array<ArrayBuffer> {
  const length = parts.reduce((sum, part) => sum + part.length, 0);
  const size = length < 128 ? [length] : length < 256 ? [0x81, length] : [0x82, length >> 8, length & 255];
  return Uint8Array.from([tag, ...size, ...parts.flatMap((part) => [...part])]);
}
