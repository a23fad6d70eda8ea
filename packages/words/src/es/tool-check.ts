import type { NoticeTexts } from '../notice-texts.ts';

export const toolCheckTexts = {
  'check-empty': {
    says: 'La comprobación no tiene ninguna lectura.',
    remedy: 'Dar tres aprietes en el ajuste de trabajo y anotar cada uno.',
  },
  'check-reading': { says: 'El apriete {shot} no es un par por encima de cero.', remedy: 'Anotar lo que mostró la referencia.' },
  'check-limit': { says: 'La comprobación no tiene par con que compararse, o su límite no está entre 0 y 50 %.', remedy: 'Anotar ambos.' },
  'check-failed': {
    says: 'Un apriete o la media se desvía {worst} de {expected}; el límite es {limit}.',
    remedy: 'Apartar la herramienta. Mirar otra vez cada tornillo que giró desde su última comprobación buena.',
  },
  'check-few-shots': {
    says: 'Solo {shots, plural, one {# apriete} other {# aprietes}}: eso no dice nada de la dispersión.',
    remedy: 'Dar {wanted} aprietes.',
  },
  'certificate-word-missing': { says: 'Al certificado copiado le falta: {word}.', remedy: 'Leerlo en el papel y anotarlo.' },
  'certificate-uncertainty-absurd': {
    says: 'La incertidumbre del certificado no está entre 0 y 20 %.',
    remedy: 'Anotar la incertidumbre expandida (k = 2) como parte de la lectura.',
  },
  'certificate-other-serial': {
    says: 'El certificado es del número de serie {serial}; la herramienta es {tool}.',
    remedy: 'Una tabla es de un solo número de serie: conseguir el certificado de esta herramienta, o tomar la otra.',
  },
  'certificate-dates-crossed': { says: 'Calibrada el {calibrated}, vence el {due}: no puede ser.', remedy: 'Leer otra vez ambas fechas.' },
  'certificate-from-future': {
    says: 'El certificado dice calibrada el {calibrated}, después del día del trabajo.',
    remedy: 'Leer otra vez la fecha, o el día del trabajo.',
  },
  'certificate-unchecked': {
    says: 'Nadie ha comparado el certificado copiado con el papel.',
    remedy: 'Una segunda persona lee en voz alta cada cifra del papel y confirma.',
  },
  'certificate-same-person': {
    says: '{person} copió el certificado y no puede comprobarlo también.',
    remedy: 'Que otra persona lo compare con el papel.',
  },
} satisfies NoticeTexts<'tool-check'>;
