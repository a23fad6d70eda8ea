import type { NoticeTexts } from '../notice-texts.ts';

export const ruleTexts = {
  'rule-unknown': {
    says: 'Zestaw reguł {rule} jest nieznany.',
    remedy: 'Wybrać jeden z tych, które „clampwright init” wypisuje w job.yaml.',
  },
  'edition-unknown': { says: 'Zestaw reguł nie ma wydania {edition}.', remedy: 'Znane wydania: {known}.' },
  'structural-size-too-small': {
    says: '{size} jest poniżej M12, najmniejszego wymiaru, który EN 1090-2 pozwala sprężać.',
    remedy: 'Poprosić inżyniera o inny wymiar albo o siłę sprężenia zadaną dla tego połączenia.',
  },
  'grade-not-preloadable': {
    says: 'Gatunku {grade} nie wolno sprężać według {rule}.',
    remedy: 'Użyć gatunku, dla którego zrobiono zestaw reguł, albo inżynier zada siłę sprężenia i metodę.',
  },
  'k-class-needed': {
    says: 'Metoda ({method}) wymaga klasy k partii ({needed}); żadnej nie podano.',
    remedy: 'Wpisać klasę k z etykiety partii.',
  },
  'k-class-insufficient': {
    says: 'Metoda ({method}) wymaga klasy k {needed}; partia ma {kClass}.',
    remedy: 'Użyć partii właściwej klasy albo metody, która tę przyjmuje.',
  },
  'lot-untested': {
    says: 'Metoda ({method}) wymaga k_m właśnie tej partii; nie wpisano ani jej badania, ani świadectwa.',
    remedy: 'Wpisać k_m i V_k ze świadectwa partii albo zrobić badanie przydatności.',
  },
  'clamp-thickness-needed': {
    says: 'Kąt zależy od ściskanej grubości, której nie podano.',
    remedy: 'Wpisać Σt: wszystkie blachy, przekładki i podkładki między łbem a nakrętką.',
  },
  'bolt-length-needed': { says: 'Obrót zależy od długości śruby, której nie podano.', remedy: 'Wpisać nominalną długość śruby.' },
  'angle-not-tabulated': {
    says: 'Przy {thickness} ściskanej grubości tabela nie podaje kąta; kończy się na {limit}.',
    remedy: 'Dać wyznaczyć kąt badaniem procedury na tym połączeniu albo zmienić metodę.',
  },
  'assembly-needed': {
    says: 'Metoda ({method}) wymaga śruby, nakrętki i podkładki z jednego zestawu sprężanego (EN 14399); połączenie nie podaje systemu albo podaje śruby zwykłe.',
    remedy: 'Wpisać {needed} w kolumnie „system” listy połączeń, zgodnie z etykietą dostawy, albo wybrać metodę dla śrub zwykłych.',
  },
  'system-needed': { says: 'Metoda ({method}) jest dla zestawów {needed}.', remedy: 'Użyć {needed} albo innej metody.' },
  'size-not-in-table': {
    says: '{size} nie ma wartości w {table}.',
    remedy: 'Przeczytać obowiązujące wydanie albo inżynier poda wartość dla tego połączenia.',
  },
  'bolt-stress-needed': {
    says: 'Dla tego kołnierza nie podano montażowego naprężenia śrub.',
    remedy: 'Zapytać inżyniera: wynika ono z uszczelki, kołnierza i śrub razem.',
  },
  'bolt-stress-above-yield': {
    says: 'Naprężenie śrub {stress} sięga granicy plastyczności, {yield}.',
    remedy: 'Sprawdzić z inżynierem naprężenie, przekrój i gatunek.',
  },
  'bolt-stress-high': {
    says: 'Naprężenie śrub to {share} granicy plastyczności; więcej niż {usual} jest dla kołnierza niezwykłe.',
    remedy: 'Inżynier potwierdza naprężenie uszczelki i obrót kołnierza.',
  },
  'friction-unknown': {
    says: 'O tarciu tej partii i smaru nic nie wiadomo.',
    remedy: 'Wpisać współczynnik k albo współczynniki tarcia z ich źródłem; nieznanego nie zastępuje się zwykłym.',
  },
  'coefficients-needed': {
    says: 'VDI 2230 wymaga współczynników tarcia gwintu i powierzchni oporowej, a nie współczynnika k.',
    remedy: 'Wpisać oba współczynniki albo klasę tarcia.',
  },
  'figure-needed': {
    says: 'Połączenie ma być dokręcone zgodnie ze specyfikacją, ale nie podano siły sprężenia ani momentu.',
    remedy: 'Wpisać siłę sprężenia albo moment od inżyniera dla tego połączenia.',
  },
  'preload-basis-needed': {
    says: 'Sam moment nie mówi, jaką daje siłę sprężenia, ani siła sprężenia, jaki moment.',
    remedy: 'Wpisać współczynnik k partii i smaru albo siłę sprężenia i moment razem.',
  },
  'tested-torque-needed': {
    says: 'Klucz kalibrowany ustawia się według badania tej partii; moment z tabeli lub wzoru się nie liczy.',
    remedy: 'Przed montażem sprawdzić co najmniej trzy zestawy partii w kalibratorze siły i wpisać wynik.',
  },
} satisfies NoticeTexts<'rule'>;
