import { createHash, randomBytes, webcrypto } from 'node:crypto';
import { chmodSync, existsSync, mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import 'reflect-metadata';
import {
  AuthorityKeyIdentifierExtension,
  BasicConstraintsExtension,
  ExtendedKeyUsage,
  ExtendedKeyUsageExtension,
  type JsonGeneralName,
  KeyUsageFlags,
  KeyUsagesExtension,
  PemConverter,
  SubjectAlternativeNameExtension,
  SubjectKeyIdentifierExtension,
  X509Certificate,
  X509CertificateGenerator,
} from '@peculiar/x509';
import { mayCertify, nameConstraints } from './name-constraints.ts';
import { isAddress } from './names.ts';

type Key = webcrypto.CryptoKey;
type Keys = webcrypto.CryptoKeyPair;
const CURVE = { name: 'ECDSA', namedCurve: 'P-256' } as const;
const SIGNING = { name: 'ECDSA', hash: 'SHA-256' } as const;
const DAY = 86_400_000;
/** of the authority: as long as a yard keeps its phones; of the server's certificate: phones refuse much longer ones (398 days, from memory) */
const DAYS = { authority: 3650, server: 397 };

/** A yard's own certificate authority, and what it made for this server. */
export interface YardAuthority {
  /** in DER: what phones install */
  readonly certificate: Uint8Array;
  /** SHA-256 in pairs of digits, to be read aloud */
  readonly fingerprint: string;
  readonly until: Date;
  /** which of these names it was not made for: phones would not accept them from it */
  readonly refuses: (names: readonly string[]) => readonly string[];
  /** Makes a certificate for the server, for some thirteen months. */
  readonly certify: (names: readonly string[], now: Date) => Promise<{ readonly cert: string; readonly key: string; readonly until: Date }>;
}

/**
 * The authority that lies in `folder`; made there when there is none. Its key never leaves the folder, and is readable by its owner alone.
 * `names`: what it may certify besides private names and addresses.
 */
export async function openAuthority(folder: string, yard: string, names: readonly string[], now: Date): Promise<YardAuthority> {
  const [certPath, keyPath, namesPath] = ['authority.pem', 'authority.key', 'names.json'].map((one) => join(folder, one)) as [
    string,
    string,
    string,
  ];
  if (!existsSync(certPath)) {
    const made = await makeAuthority(yard, names, now);
    mkdirSync(folder, { recursive: true, mode: 0o700 });
    writeWhole(namesPath, JSON.stringify(names.filter((name) => !isAddress(name))), 0o644);
    writeWhole(keyPath, made.key, 0o600);
    writeWhole(certPath, made.cert, 0o644);
  }
  const certificate = new X509Certificate(readFileSync(certPath, 'utf8'));
  const key = await privateKey(readFileSync(keyPath, 'utf8'));
  const besides = JSON.parse(readFileSync(namesPath, 'utf8')) as string[];
  const raw = new Uint8Array(certificate.rawData);
  return {
    certificate: raw,
    fingerprint: createHash('sha256').update(raw).digest('hex').toUpperCase().match(/../g)!.join(' '),
    until: certificate.notAfter,
    refuses: (wanted) => wanted.filter((name) => !mayCertify(name, besides)),
    certify: (wanted, at) => certify({ certificate, key }, wanted, at),
  };
}

const validity = (now: Date, days: number) => ({
  serialNumber: `00${randomBytes(16).toString('hex')}`,
  // a phone whose clock is behind shall not refuse it
  notBefore: new Date(now.getTime() - 2 * DAY),
  notAfter: new Date(now.getTime() + days * DAY),
});

async function makeAuthority(yard: string, names: readonly string[], now: Date): Promise<{ cert: string; key: string }> {
  const keys = await generate();
  const cert = await X509CertificateGenerator.createSelfSigned({
    ...validity(now, DAYS.authority),
    name: [{ CN: [`Clampwright authority of ${yard}`] }],
    signingAlgorithm: SIGNING,
    keys,
    extensions: [
      new BasicConstraintsExtension(true, 0, true),
      new KeyUsagesExtension(KeyUsageFlags.keyCertSign | KeyUsageFlags.cRLSign, true),
      await SubjectKeyIdentifierExtension.create(keys.publicKey),
      nameConstraints(names.filter((name) => !isAddress(name))),
    ],
  });
  return { cert: cert.toString('pem'), key: await keyText(keys.privateKey) };
}

async function certify(issuer: { certificate: X509Certificate; key: Key }, names: readonly string[], now: Date) {
  const keys = await generate();
  const cert = await X509CertificateGenerator.create({
    ...validity(now, DAYS.server),
    subject: [{ CN: ['Clampwright server'] }],
    issuer: issuer.certificate.subject,
    signingAlgorithm: SIGNING,
    publicKey: keys.publicKey,
    signingKey: issuer.key,
    extensions: [
      new BasicConstraintsExtension(false, undefined, true),
      new KeyUsagesExtension(KeyUsageFlags.digitalSignature, true),
      new ExtendedKeyUsageExtension([ExtendedKeyUsage.serverAuth]),
      new SubjectAlternativeNameExtension(names.map((value): JsonGeneralName => ({ type: isAddress(value) ? 'ip' : 'dns', value }))),
      await AuthorityKeyIdentifierExtension.create(issuer.certificate.publicKey),
      await SubjectKeyIdentifierExtension.create(keys.publicKey),
    ],
  });
  const chain = `${cert.toString('pem')}\n${issuer.certificate.toString('pem')}\n`;
  return { cert: chain, key: await keyText(keys.privateKey), until: cert.notAfter };
}

const generate = () => webcrypto.subtle.generateKey(CURVE, true, ['sign', 'verify']) as Promise<Keys>;
const keyText = async (key: Key) => PemConverter.encode(await webcrypto.subtle.exportKey('pkcs8', key), 'PRIVATE KEY');
const privateKey = (text: string) => webcrypto.subtle.importKey('pkcs8', PemConverter.decodeFirst(text), CURVE, false, ['sign']);

/** Never half a key: written aside, then put in its place. */
function writeWhole(path: string, text: string, mode: number): void {
  writeFileSync(`${path}.new`, text, { mode });
  chmodSync(`${path}.new`, mode);
  renameSync(`${path}.new`, path);
}
