import type { NoticeTexts } from '../notice-texts.ts';

export const inspectionTexts = {
  'moment-unreadable': { says: 'Brak czasu albo to nie jest czas.', remedy: 'Wpisać datę, godzinę i strefę czasową.' },
  'inspection-too-early': {
    says: '{hours} h od ostatniej śruby; kontrolę robi się od {from} h.',
    remedy: 'Czekać: świeże połączenia jeszcze osiadają i przeszłyby zbyt łatwo.',
  },
  'inspection-too-late': {
    says: '{hours} h od ostatniej śruby; termin kontroli był do {until} h.',
    remedy: 'Mimo to skontrolować, napisać to w zapisie i dać inżynierowi do oceny.',
  },
  'recheck-open': {
    says: 'Połączenia {joint} nie sprawdzono ponownie od ostatniego przejścia.',
    remedy: 'Obejść je jeszcze raz po {hours} h, przed podaniem ciśnienia.',
  },
  'recheck-too-early': {
    says: 'Połączenie {joint} sprawdzono ponownie przed upływem {hours} h od ostatniego przejścia: uszczelka jeszcze nie osiadła.',
    remedy: 'Obejść je jeszcze raz teraz, przed podaniem ciśnienia.',
  },
  'inspected-not-drawn': {
    says: 'Śruby {bolt} połączenia {joint} nie wylosowano.',
    remedy: 'Skontrolować wylosowane śruby; inne też można obejrzeć, w osobnym zapisie.',
  },
  'inspected-twice': {
    says: 'Śruba {bolt} połączenia {joint} jest w zapisie dwa razy.',
    remedy: 'Śruba liczy się raz. Poprawić błędny wpis.',
  },
  'torque-proves-nothing': {
    says: 'Metoda obraca te śruby poza granicę plastyczności albo ich moment niczego nie dowodzi.',
    remedy: 'Obejrzeć znaki, szczelinomierze lub końcówki, jak mówi metoda; żadnego sprawdzania momentem.',
  },
  'inspected-with-own-tool': {
    says: 'Narzędzie {tool} dokręcało te śruby; nie może ich kontrolować.',
    remedy: 'Użyć własnego wywzorcowanego klucza inspektora.',
  },
} satisfies NoticeTexts<'inspection'>;
