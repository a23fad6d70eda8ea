import type { NoticeTexts } from '../notice-texts.ts';

export const toolCheckTexts = {
  'check-empty': { says: 'The check has no reading.', remedy: 'Take three shots at the working setting and enter each.' },
  'check-reading': { says: 'Shot {shot} is not a torque above zero.', remedy: 'Enter what the reference showed.' },
  'check-limit': { says: 'The check has no torque to be held against, or its limit is not between 0 and 50 %.', remedy: 'Enter both.' },
  'check-failed': {
    says: 'A shot or the mean is {worst} off {expected}; the limit is {limit}.',
    remedy: 'Set the tool aside. Look again at every bolt it turned since its last good check.',
  },
  'check-few-shots': {
    says: 'Only {shots, plural, one {# shot} other {# shots}}: that says nothing about scatter.',
    remedy: 'Take {wanted} shots.',
  },
  'certificate-word-missing': { says: 'The certificate as typed has no {word}.', remedy: 'Read it on the paper and enter it.' },
  'certificate-uncertainty-absurd': {
    says: 'The certificate’s uncertainty is not between 0 and 20 %.',
    remedy: 'Enter the expanded uncertainty (k = 2) as a share of the reading.',
  },
  'certificate-other-serial': {
    says: 'The certificate is for serial number {serial}; the tool is {tool}.',
    remedy: 'A chart belongs to one serial number: get this tool’s certificate, or take the other tool.',
  },
  'certificate-dates-crossed': { says: 'Calibrated on {calibrated}, due on {due}: that cannot be.', remedy: 'Read both dates again.' },
  'certificate-from-future': {
    says: 'The certificate says calibrated on {calibrated}, after the day of the work.',
    remedy: 'Read the date again, or the day of the work.',
  },
  'certificate-unchecked': {
    says: 'Nobody has read the typed certificate against the paper.',
    remedy: 'A second person reads every figure aloud from the paper and confirms.',
  },
  'certificate-same-person': {
    says: '{person} typed the certificate and cannot check it too.',
    remedy: 'Have another person read it against the paper.',
  },
} satisfies NoticeTexts<'tool-check'>;
