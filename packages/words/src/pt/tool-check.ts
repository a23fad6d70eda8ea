import type { NoticeTexts } from '../notice-texts.ts';

export const toolCheckTexts = {
  'check-empty': { says: 'A verificação não tem nenhuma leitura.', remedy: 'Dar três apertos na regulação de trabalho e anotar cada um.' },
  'check-reading': { says: 'O aperto {shot} não é um binário acima de zero.', remedy: 'Anotar o que a referência mostrou.' },
  'check-limit': {
    says: 'A verificação não tem binário com que se comparar, ou o seu limite não está entre 0 e 50 %.',
    remedy: 'Anotar ambos.',
  },
  'check-failed': {
    says: 'Um aperto ou a média desvia-se {worst} de {expected}; o limite é {limit}.',
    remedy: 'Pôr a ferramenta de parte. Ver outra vez cada parafuso que rodou desde a sua última verificação boa.',
  },
  'check-few-shots': {
    says: 'Só {shots, plural, one {# aperto} other {# apertos}}: isso não diz nada da dispersão.',
    remedy: 'Dar {wanted} apertos.',
  },
  'certificate-word-missing': { says: 'Ao certificado copiado falta: {word}.', remedy: 'Lê-lo no papel e anotá-lo.' },
  'certificate-uncertainty-absurd': {
    says: 'A incerteza do certificado não está entre 0 e 20 %.',
    remedy: 'Anotar a incerteza expandida (k = 2) como parte da leitura.',
  },
  'certificate-other-serial': {
    says: 'O certificado é do número de série {serial}; a ferramenta é {tool}.',
    remedy: 'Uma tabela é de um só número de série: arranjar o certificado desta ferramenta, ou pegar na outra.',
  },
  'certificate-dates-crossed': {
    says: 'Calibrada em {calibrated}, vence em {due}: não pode ser.',
    remedy: 'Ler outra vez ambas as datas.',
  },
  'certificate-from-future': {
    says: 'O certificado diz calibrada em {calibrated}, depois do dia do trabalho.',
    remedy: 'Ler outra vez a data, ou o dia do trabalho.',
  },
  'certificate-unchecked': {
    says: 'Ninguém comparou o certificado copiado com o papel.',
    remedy: 'Uma segunda pessoa lê em voz alta cada valor do papel e confirma.',
  },
  'certificate-same-person': {
    says: '{person} copiou o certificado e não o pode verificar também.',
    remedy: 'Que outra pessoa o compare com o papel.',
  },
} satisfies NoticeTexts<'tool-check'>;
