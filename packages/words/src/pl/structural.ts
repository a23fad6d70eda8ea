import type { NoticeTexts } from '../notice-texts.ts';

export const structuralTexts = {
  'rotation-not-tabulated': {
    says: 'Tabela obrotów kończy się na długości śruby {limit}; ta śruba ma {boltLength}.',
    remedy: 'Wyznaczyć obrót badaniem w kalibratorze siły ze stalą połączenia albo użyć innej metody.',
  },
  'readings-wrong': {
    says: 'Podano odczytów: {found}, reguła wymaga {wanted}.',
    remedy: 'Wykonać tyle odczytów, ile wymaga, nie więcej i nie mniej.',
  },
} satisfies NoticeTexts<'structural'>;
