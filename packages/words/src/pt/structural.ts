import type { NoticeTexts } from '../notice-texts.ts';

export const structuralTexts = {
  'rotation-not-tabulated': {
    says: 'A tabela de rotações acaba num comprimento de parafuso de {limit}; este parafuso tem {boltLength}.',
    remedy: 'Encontrar a rotação por um ensaio num calibrador de tração com o aço da ligação, ou usar outro método.',
  },
  'readings-wrong': {
    says: 'São dadas {found} leituras, a regra pede {wanted}.',
    remedy: 'Fazer as leituras que ela pede, nem mais nem menos.',
  },
} satisfies NoticeTexts<'structural'>;
