import type { NoticeTexts } from '../notice-texts.ts';

export const rotationalCapacityTexts = {
  'lot-torque-high': {
    says: 'Lote {lot}, conjunto {assembly}: precisou de {found}; {limit} é o máximo de que pode precisar.',
    remedy: 'A combinação de lotes não passou: limpar e lubrificar como diz o fabricante e ensaiar outra vez, ou devolvê-la.',
  },
  'lot-damaged': {
    says: 'Lote {lot}, conjunto {assembly}: rosca arrancada ou partido.',
    remedy: 'A combinação de lotes não passou: pô-la de parte.',
  },
} satisfies NoticeTexts<'rotational-capacity'>;
