import type { NoticeTexts } from '../notice-texts.ts';

export const structuralTexts = {
  'rotation-not-tabulated': {
    says: 'La tabla de giros acaba en una longitud de tornillo de {limit}; este tornillo mide {boltLength}.',
    remedy: 'Hallar el giro con un ensayo en un calibrador de tracción con el acero de la unión, o usar otro método.',
  },
  'readings-wrong': { says: 'Se dan {found} lecturas, la regla pide {wanted}.', remedy: 'Tomar las lecturas que pide, ni más ni menos.' },
} satisfies NoticeTexts<'structural'>;
