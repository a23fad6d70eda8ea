// Where things lie on a device's shelf. Every key starts with the book; numbers are padded so that keys sort as they count.
const padded = (n: number) => String(n).padStart(15, '0');

export const keyOf = {
  chain: (job: string) => `${job}/chain`,
  cursor: (job: string) => `${job}/cursor`,
  outbox: (job: string) => `${job}/outbox/`,
  waiting: (job: string, sequence: number) => `${job}/outbox/${padded(sequence)}`,
  signed: (job: string) => `${job}/signed/`,
  signedHead: (job: string, sequence: number) => `${job}/signed/${padded(sequence)}`,
  log: (job: string) => `${job}/log/`,
  place: (job: string, index: number) => `${job}/log/${padded(index)}`,
  attachments: (job: string) => `${job}/attachment/`,
  attachment: (job: string, hash: string) => `${job}/attachment/${hash}`,
  unsent: (job: string) => `${job}/unsent/`,
  unsentAttachment: (job: string, hash: string) => `${job}/unsent/${hash}`,
  evidence: (job: string, size: number) => `${job}/evidence/${padded(size)}`,
} as const;
