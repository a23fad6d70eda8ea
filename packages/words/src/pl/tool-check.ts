import type { NoticeTexts } from '../notice-texts.ts';

export const toolCheckTexts = {
  'check-empty': { says: 'Sprawdzenie nie ma odczytu.', remedy: 'Zrobić trzy pociągnięcia przy nastawie roboczej i wpisać każde.' },
  'check-reading': { says: 'Pociągnięcie {shot} nie jest momentem większym od zera.', remedy: 'Wpisać, co pokazał wzorzec.' },
  'check-limit': {
    says: 'Sprawdzenie nie ma momentu do porównania albo jego granica nie jest między 0 a 50 %.',
    remedy: 'Wpisać jedno i drugie.',
  },
  'check-failed': {
    says: 'Pociągnięcie albo średnia odbiega o {worst} od {expected}; granica to {limit}.',
    remedy: 'Odłożyć narzędzie. Obejrzeć ponownie każdą śrubę, którą obróciło od ostatniego dobrego sprawdzenia.',
  },
  'check-few-shots': {
    says: 'Tylko {shots, plural, one {# pociągnięcie} few {# pociągnięcia} many {# pociągnięć} other {# pociągnięcia}}: to nic nie mówi o rozrzucie.',
    remedy: 'Zrobić tyle pociągnięć: {wanted}.',
  },
  'certificate-word-missing': { says: 'W przepisanym świadectwie brakuje: {word}.', remedy: 'Przeczytać na papierze i wpisać.' },
  'certificate-uncertainty-absurd': {
    says: 'Niepewność ze świadectwa nie jest między 0 a 20 %.',
    remedy: 'Wpisać niepewność rozszerzoną (k = 2) jako udział odczytu.',
  },
  'certificate-other-serial': {
    says: 'Świadectwo jest dla numeru seryjnego {serial}; narzędzie to {tool}.',
    remedy: 'Tabela należy do jednego numeru seryjnego: zdobyć świadectwo tego narzędzia albo wziąć tamto.',
  },
  'certificate-dates-crossed': {
    says: 'Wywzorcowane {calibrated}, termin {due}: tak być nie może.',
    remedy: 'Przeczytać obie daty ponownie.',
  },
  'certificate-from-future': {
    says: 'Świadectwo mówi, że wywzorcowano {calibrated}, po dniu pracy.',
    remedy: 'Przeczytać ponownie datę albo dzień pracy.',
  },
  'certificate-unchecked': {
    says: 'Nikt nie porównał przepisanego świadectwa z papierem.',
    remedy: 'Druga osoba czyta na głos każdą liczbę z papieru i potwierdza.',
  },
  'certificate-same-person': {
    says: '{person} przepisał(a) świadectwo i nie może go też sprawdzać.',
    remedy: 'Dać innej osobie do porównania z papierem.',
  },
} satisfies NoticeTexts<'tool-check'>;
