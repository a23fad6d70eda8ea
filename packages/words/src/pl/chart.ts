import type { NoticeTexts } from '../notice-texts.ts';

export const chartTexts = {
  'chart-empty': {
    says: 'Tabela narzędzia {serial} nie ma żadnej nastawy do dokręcania.',
    remedy: 'Wpisać nastawy z jego świadectwa wzorcowania.',
  },
  'chart-other-serial': {
    says: 'Tabela należy do numeru seryjnego {chartSerial}, narzędzie to {serial}.',
    remedy: 'Wczytać świadectwo właśnie tego narzędzia. Tabela bliźniaczego narzędzia się nie liczy.',
  },
  'chart-torque-absurd': {
    says: 'Moment przy {setting} to niewiarygodna liczba.',
    remedy: 'Przepisać liczbę ze świadectwa ponownie, z jednostką.',
  },
  'chart-setting-twice': {
    says: '{setting} jest wpisane dwa razy: {first} i {second}.',
    remedy: 'Zostawić wiersz, który pokazuje świadectwo.',
  },
  'chart-not-monotone': {
    says: 'Moment nie rośnie od {lower} ({lowerTorque}) do {upper} ({upperTorque}).',
    remedy:
      'Porównać obie komórki ze świadectwem; jeśli tak w nim jest, dać narzędzie do ponownego wzorcowania. Do tego czasu tabeli się nie używa.',
  },
  'chart-gap': {
    says: 'Między {lower} a {upper} brakuje nastaw.',
    remedy: 'Wpisać brakujące wiersze; jeśli ich nie zmierzono, numerować tylko zmierzone.',
  },
  'tool-too-small': {
    says: 'Narzędzie {tool} osiąga najwyżej {largest}; metoda wymaga od {low} do {high}.',
    remedy: 'Wziąć większe narzędzie, multiplikator albo metodę i smar, które wymagają mniejszego momentu.',
  },
  'tool-too-large': {
    says: 'Najniższa nastawa narzędzia {tool} daje {smallest}; metoda wymaga od {low} do {high}.',
    remedy: 'Wziąć mniejsze narzędzie.',
  },
  'chart-too-coarse': {
    says: 'Żadna wywzorcowana nastawa narzędzia {tool} nie leży między {low} a {high}; najbliższe dają {below} i {above}.',
    remedy: 'Wziąć inne narzędzie, dać wywzorcować nastawę pomiędzy, albo właściciel tabeli dopuści interpolację.',
  },
  'calibration-expired': {
    says: 'Wzorcowanie narzędzia {serial} straciło ważność {due}; praca jest {workDate}.',
    remedy: 'Wywzorcować je albo wziąć narzędzie, którego świadectwo obejmuje ten dzień.',
  },
  'calibration-later': { says: 'Narzędzie {serial} wywzorcowano {calibrated}, po dniu pracy {workDate}.', remedy: 'Sprawdzić obie daty.' },
  'calibration-due-soon': {
    says: 'Termin wzorcowania narzędzia {serial} mija {due}, za {days, plural, =0 {mniej niż dzień} one {# dzień} few {# dni} many {# dni} other {# dnia}}.',
    remedy: 'Zamówić wzorcowanie albo skończyć przed tym dniem.',
  },
  'setting-interpolated': {
    says: '{setting} nie zmierzono: jest interpolowana między sąsiednimi, jak dopuszcza właściciel tabeli.',
    remedy: 'Woleć zmierzoną nastawę albo dać wywzorcować tę.',
  },
  'accuracy-used-up': {
    says: 'Powtarzalność narzędzia ±{repeatability} wyczerpuje dokładność, którą dopuszcza metoda; do tego dochodzi niepewność ze świadectwa.',
    remedy: 'Sprawdzać narzędzie przed każdą zmianą i starannie kontrolować.',
  },
} satisfies NoticeTexts<'chart'>;
