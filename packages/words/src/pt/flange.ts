import type { NoticeTexts } from '../notice-texts.ts';

export const flangeTexts = {
  'flange-unknown': {
    says: '{standard} não traz nenhuma flange {size} {rating}.',
    remedy: 'Verificar medida e classe de pressão no bordo da flange; ou anotar à mão parafusos, círculo de furação e furo.',
  },
  'gasket-unknown': {
    says: 'Não se conhecem valores para a junta «{gasket}».',
    remedy: 'Anotar os valores do fabricante da junta, com a sua fonte.',
  },
  'assembly-stress-limited': {
    says: 'A junta pede uma tensão de parafuso de {wanted}; {by, select, greatest {a tensão máxima do parafuso limita-a a} least {a tensão mínima do parafuso sobe-a para} other {a flange limita-a a}} {selected}.',
    remedy: 'Ler as verificações de junta e flange a esta tensão antes de continuar.',
  },
  'gasket-not-seated': {
    says: 'Com uma tensão de parafuso de {stress} a junta não assenta; precisa de {limit}.',
    remedy: 'O projetista escolhe outra junta, parafusos mais resistentes ou uma face de contacto mais estreita.',
  },
  'gasket-unloads-in-service': {
    says: 'Com uma tensão de parafuso de {stress} fica pouco demais sobre a junta em serviço; precisa de {limit}.',
    remedy: 'O projetista escolhe outra junta ou parafusos mais resistentes, ou revê pressão e relaxação.',
  },
  'gasket-crushed': {
    says: 'Uma tensão de parafuso de {stress} esmaga a junta; ela aguenta {limit}.',
    remedy: 'Baixar a tensão de parafuso, ou o projetista escolhe uma junta que aguente mais.',
  },
  'flange-rotates-too-far': {
    says: 'Com uma tensão de parafuso de {stress} as flanges rodam mais do que a junta aguenta; o limite é {limit}.',
    remedy: 'Baixar a tensão de parafuso, ou o projetista revê flange e junta.',
  },
} satisfies NoticeTexts<'flange'>;
