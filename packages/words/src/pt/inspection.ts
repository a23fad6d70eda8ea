import type { NoticeTexts } from '../notice-texts.ts';

export const inspectionTexts = {
  'moment-unreadable': { says: 'Falta uma hora, ou não o é.', remedy: 'Anotar data, hora e fuso horário.' },
  'inspection-too-early': {
    says: '{hours} h desde o último parafuso; a inspeção faz-se a partir das {from} h.',
    remedy: 'Esperar: as ligações recentes ainda assentam, e passariam com facilidade a mais.',
  },
  'inspection-too-late': {
    says: '{hours} h desde o último parafuso; a inspeção devia fazer-se dentro de {until} h.',
    remedy: 'Inspecionar na mesma, dizê-lo no registo e o engenheiro que o julgue.',
  },
  'recheck-open': {
    says: 'A ligação {joint} não foi reverificada desde a sua última passagem.',
    remedy: 'Dar outra volta depois de {hours} h, antes de dar pressão.',
  },
  'recheck-too-early': {
    says: 'A ligação {joint} foi reverificada menos de {hours} h depois da sua última passagem: a junta não tinha assentado.',
    remedy: 'Dar outra volta agora, antes de dar pressão.',
  },
  'inspected-not-drawn': {
    says: 'O parafuso {bolt} da ligação {joint} não saiu no sorteio.',
    remedy: 'Inspecionar os parafusos sorteados; também se podem ver outros, num registo próprio.',
  },
  'inspected-twice': {
    says: 'O parafuso {bolt} da ligação {joint} está duas vezes no registo.',
    remedy: 'Um parafuso conta uma vez. Corrigir a anotação errada.',
  },
  'torque-proves-nothing': {
    says: 'O método roda estes parafusos para além da cedência, ou o seu binário não prova nada.',
    remedy: 'Ver marcas, apalpa-folgas ou pontas estriadas como o método diz; nenhuma verificação de binário.',
  },
  'inspected-with-own-tool': {
    says: 'A ferramenta {tool} apertou estes parafusos; não os pode inspecionar.',
    remedy: 'Usar a chave certificada própria do inspetor.',
  },
} satisfies NoticeTexts<'inspection'>;
