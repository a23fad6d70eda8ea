import type { NoticeTexts } from '../notice-texts.ts';

const SETTLE = 'Settle it by name: replace, rework or use as it is, with the reason.';
const RESEND = 'Nothing was kept of it. Send it again as the device holds it; if it is refused again, report the fault.';

export const recordTexts = {
  'bolt-tightened-twice': { says: 'Bolt {bolt} was tightened in “{step}” twice.', remedy: SETTLE },
  'bolt-not-in-joint': { says: 'The joint has no bolt {bolt} in the issued plan.', remedy: SETTLE },
  'step-too-early': { says: 'Bolt {bolt} was tightened in “{step}” before “{open}” was done on every bolt.', remedy: SETTLE },
  'bolt-out-of-order': { says: 'Bolt {bolt} was tightened out of sequence in “{step}”.', remedy: SETTLE },
  'step-not-issued': { says: 'The issued plan has no “{step}” for this joint.', remedy: SETTLE },
  'setting-not-issued': {
    says: 'Bolt {bolt}, “{step}”: setting {setting} on tool {tool} is not in the issued plan.',
    remedy: SETTLE,
  },
  'plan-not-issued': { says: 'Work was done on a joint for which no plan was issued.', remedy: SETTLE },
  'plan-was-withdrawn': { says: 'Work was done to plan {number} after it was withdrawn.', remedy: SETTLE },
  'plan-slice-differs': { says: 'Work was done to a card that is not the one of plan {number}.', remedy: SETTLE },
  'tool-not-known': { says: 'Tool {tool} is in no issued plan and not in the yard book.', remedy: SETTLE },
  'tool-expired': { says: 'Tool {tool} was used after its calibration was due on {due}.', remedy: SETTLE },
  'tool-not-checked': { says: 'Tool {tool} has no daily tool check on {date}.', remedy: SETTLE },
  'tool-check-failed': { says: 'Tool {tool} failed its daily tool check on {date} and was used.', remedy: SETTLE },
  'person-not-named': { says: 'Nobody is named as the one who did it.', remedy: SETTLE },
  'person-not-known': { says: 'Person {person} is not enrolled in this job.', remedy: SETTLE },
  'person-not-qualified': { says: 'Person {person} was qualified until {until}.', remedy: SETTLE },
  'person-was-revoked': { says: 'Person {person} had been taken off the job.', remedy: SETTLE },
  'device-was-revoked': { says: 'Device {device} had been revoked.', remedy: SETTLE },
  'device-forked': {
    says: 'Device {device} told two different things at place {sequence} of its chain: it was copied or set back.',
    remedy: 'Find the devices, revoke the key, enrol them anew; settle by name which of the entries hold.',
  },
  'device-not-enrolled': { says: 'Device {device} is not enrolled in this job.', remedy: SETTLE },
  'datum-differs': {
    says: 'The datum that was confirmed is not the one of the plan.',
    remedy: 'Stop at this joint and find bolt 1 again; settle it by name.',
  },
  'bolts-left-open': { says: 'The joint was signed with {count} bolts not tightened.', remedy: SETTLE },
  'inspection-failed': { says: 'Bolt {bolt} failed its inspection.', remedy: SETTLE },
  'trouble-reported': { says: 'Bolt {bolt}: {what}.', remedy: SETTLE },
  'entry-not-readable': {
    says: 'An entry of kind {kind}, version {version}, cannot be read here. It is kept as it came.',
    remedy: 'Read it with the version of Clampwright that wrote it, or a later one.',
  },
  'corrects-unknown-entry': { says: 'A correction names entry {entry}, which is not in this book.', remedy: SETTLE },
  'counter-behind': { says: 'An entry has counter {counter} and names entries up to {known}.', remedy: SETTLE },
  'batch-not-readable': { says: 'The batch is no gzip, was cut short, or is larger than {limit} bytes.', remedy: RESEND },
  'batch-malformed': { says: 'A batch is signed heads, an empty line and 1 to {entries} entries.', remedy: RESEND },
  'not-canonical': { says: 'This is not canonical JSON: {why}.', remedy: RESEND },
  'entry-too-large': { says: 'An entry of {bytes} bytes; the limit is {limit}.', remedy: 'Put photos and long texts into attachments.' },
  'entry-malformed': { says: 'The field “{field}” of an entry is missing or not as described.', remedy: RESEND },
  'entry-of-another-book': { says: 'An entry of book {job} was sent to another book.', remedy: RESEND },
  'entry-of-another-device': { says: 'An entry of device {device} was sent in the name of another.', remedy: RESEND },
  'chain-has-a-gap': {
    says: 'Entry {sequence} of device {device} follows on one that is not here.',
    remedy: 'Send the entries before it first.',
  },
  'chain-counter-falls': { says: 'The counter does not rise at entry {sequence} of device {device}.', remedy: RESEND },
  'head-malformed': { says: 'The field “{field}” of a signed chain head is missing or not as described.', remedy: RESEND },
  'head-not-signed': { says: 'The signature of device {device} does not fit its entry {sequence}.', remedy: RESEND },
  'key-of-another-device': { says: 'The key does not belong to device {device}.', remedy: 'Enrol the device anew.' },
  'receipt-malformed': { says: 'The field “{field}” of a receipt is missing or not as described.', remedy: RESEND },
  'receipt-of-another-entry': { says: 'The receipt of place {index} names another entry.', remedy: RESEND },
  'note-malformed': { says: 'Line {line} of the signed note is not as described.', remedy: 'Use the checkpoint as it was written.' },
  'note-not-signed': { says: 'No signature of {name} under this note fits its text.', remedy: 'Do not rely on it.' },
  'log-shorter-than-seen': {
    says: 'The log has {size} entries; it was seen with {seen}.',
    remedy: 'Entries are missing. Ask whoever keeps the log for the whole of it; the devices still hold what they wrote.',
  },
  'log-differs-from-seen': {
    says: 'The log of {size} entries does not continue the one that was seen.',
    remedy: 'Do not rely on it. Compare with the devices and earlier handover files.',
  },
} satisfies NoticeTexts<'record'>;
