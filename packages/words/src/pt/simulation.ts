import type { NoticeTexts } from '../notice-texts.ts';

export const simulationTexts = {
  'simulation-runs': { says: '«{runs}» não é um número de corridas de simulação.', remedy: 'Dar um número inteiro de 1 a {most}.' },
  'simulation-seed': {
    says: '«{seed}» não é uma semente.',
    remedy: 'Dar um número inteiro a partir de 0; a mesma semente dá os mesmos valores.',
  },
  'mistake-unknown': { says: '«{name}» não é um erro que se simule.', remedy: 'Escolher entre {known}.' },
  'mistake-rate': { says: '«{rate}» não é uma frequência de {name}.', remedy: 'Dar uma parte dos apertos de 0 a {most}.' },
} satisfies NoticeTexts<'simulation'>;
