import type { NoticeTexts } from '../notice-texts.ts';

export const simulationTexts = {
  'simulation-runs': { says: '«{runs}» no es un número de pasadas de simulación.', remedy: 'Dar un número entero de 1 a {most}.' },
  'simulation-seed': {
    says: '«{seed}» no es una semilla.',
    remedy: 'Dar un número entero desde 0; la misma semilla da las mismas cifras.',
  },
  'mistake-unknown': { says: '«{name}» no es un error que se simule.', remedy: 'Elegir entre {known}.' },
  'mistake-rate': { says: '«{rate}» no es una frecuencia de {name}.', remedy: 'Dar una parte de los aprietes de 0 a {most}.' },
} satisfies NoticeTexts<'simulation'>;
