import type { NoticeTexts } from '../notice-texts.ts';

export const rotationalCapacityTexts = {
  'lot-torque-high': {
    says: 'Lote {lot}, conjunto {assembly}: necesitó {found}; {limit} es lo máximo que puede necesitar.',
    remedy: 'La combinación de lotes no ha pasado: limpiar y lubricar como dice su fabricante y ensayar otra vez, o devolverla.',
  },
  'lot-damaged': {
    says: 'Lote {lot}, conjunto {assembly}: rosca arrancada o rotura.',
    remedy: 'La combinación de lotes no ha pasado: apartarla.',
  },
} satisfies NoticeTexts<'rotational-capacity'>;
