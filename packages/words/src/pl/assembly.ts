import type { NoticeTexts } from '../notice-texts.ts';

export const assemblyTexts = {
  'protrusion-short': {
    says: 'Śruba {bolt}: z nakrętki wystaje {found} gwintu; najmniej ma być {wanted}.',
    remedy: 'Wziąć dłuższą śrubę.',
  },
  'clear-threads-few': {
    says: 'Śruba {bolt}: {found, plural, =0 {żadnego pełnego zwoju} one {# pełny zwój} few {# pełne zwoje} many {# pełnych zwojów} other {# pełnego zwoju}} między nakrętką a trzpieniem; co najmniej {wanted}.',
    remedy: 'Wziąć śrubę właściwej długości albo dać jedną podkładkę więcej pod łeb.',
  },
  'plates-step': {
    says: 'Blachy jednej warstwy różnią się o {found}; dopuszcza się {allowed}.',
    remedy: 'Włożyć przekładkę właściwej grubości.',
  },
  'packs-wrong': {
    says: '{count, plural, one {Przekładka jest niezgodna} few {# przekładki są niezgodne} many {# przekładek jest niezgodnych} other {# przekładki jest niezgodne}} z tym, co dopuszczone: każda co najmniej 2 mm, najwyżej trzy.',
    remedy: 'Użyć mniej i grubszych.',
  },
  'slip-surface-other': {
    says: 'Powierzchnia cierna ma zadaną klasę {specified}; zastano klasę {found}.',
    remedy: 'Przerwać. Przygotować powierzchnię zgodnie ze specyfikacją albo zapytać inżyniera, ile przeniesie zastana.',
  },
  'gasket-other': {
    says: 'Uszczelka: {found}; specyfikacja mówi: {wanted}.',
    remedy: 'Zdobyć właściwą uszczelkę. Moment jest ważny tylko dla swojej uszczelki.',
  },
  'gasket-used': { says: 'Uszczelka nie jest nowa.', remedy: 'Użyć nowej. Uszczelki nigdy nie używa się dwa razy.' },
  'gasket-faces': {
    says: 'Nie stwierdzono, że powierzchnie przylgowe są czyste i nieuszkodzone.',
    remedy: 'Oczyścić i obejrzeć obie; rysy promieniowe w poprzek przylgi idą do inżyniera.',
  },
} satisfies NoticeTexts<'assembly'>;
