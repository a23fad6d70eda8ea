import type { NoticeTexts } from '../notice-texts.ts';

export const rotationalCapacityTexts = {
  'lot-torque-high': {
    says: 'Partia {lot}, zestaw {assembly}: potrzebował {found}; najwyżej może potrzebować {limit}.',
    remedy: 'To zestawienie partii nie przeszło: oczyścić i nasmarować, jak mówi producent, i zbadać ponownie albo zwrócić.',
  },
  'lot-damaged': {
    says: 'Partia {lot}, zestaw {assembly}: zerwany gwint albo pęknięcie.',
    remedy: 'To zestawienie partii nie przeszło: odłożyć je.',
  },
} satisfies NoticeTexts<'rotational-capacity'>;
