import type { NoticeTexts } from '../notice-texts.ts';

export const inputTexts = {
  'file-missing': { says: 'Nie ma pliku {file}.', remedy: 'Włożyć go do folderu zlecenia albo poprawić nazwę.' },
  'file-empty': { says: 'Plik {file} jest pusty.', remedy: 'Wpisać przynajmniej nagłówki i jeden wiersz.' },
  'file-too-large': { says: 'Plik {file} jest większy niż {limit}.', remedy: 'Podzielić zlecenie na kilka folderów.' },
  'file-not-text': { says: 'Plik {file} nie jest plikiem tekstowym.', remedy: 'Zapisać go z arkusza jako XLSX lub CSV (UTF-8).' },
  'encoding-assumed': {
    says: 'Plik {file} nie jest w UTF-8; odczytano go jako {encoding}.',
    remedy: 'Sprawdzić nazwy ze znakami narodowymi albo zapisać plik jako UTF-8.',
  },
  'path-leaves-folder': {
    says: 'Ścieżka {path} wychodzi poza folder zlecenia.',
    remedy: 'Włożyć plik do folderu zlecenia i podać go stamtąd.',
  },
  'csv-broken': {
    says: 'Tabeli nie da się dalej czytać od tego miejsca: {problem}.',
    remedy: 'Szukać w tym wierszu niezamkniętego cudzysłowu albo zbędnego separatora.',
  },
  'heading-row-missing': {
    says: 'Nie rozpoznano wiersza nagłówków.',
    remedy: 'Jeden z pierwszych wierszy musi nazywać kolumny, między innymi: {wanted}.',
  },
  'column-missing': { says: 'Brak kolumny „{wanted}”.', remedy: 'Dodać ją, z jednym z nagłówków z docs/columns.md.' },
  'column-twice': {
    says: 'Nagłówek „{heading}” znaczy {meaning}, tak samo „{other}”.',
    remedy: 'Zostawić jeden z dwóch albo powiedzieć, który to, przy nagłówku w aplikacji albo przez --map "{heading}={meaning}".',
  },
  'column-unclear': {
    says: 'Nagłówek „{heading}” może znaczyć: {candidates}.',
    remedy:
      'Powiedzieć raz, co znaczy, przy nagłówku w aplikacji albo przez --map "{heading}={example}" albo --map "{heading}=ignore". Zapamięta to mapping.yaml.',
  },
  'column-asked': {
    says: 'Żaden nagłówek nie znaczy {wanted}; nie zrozumiano: {candidates}.',
    remedy:
      'Jeśli to jeden z nich, powiedzieć to raz, przy nagłówku w aplikacji albo przez --map "{example}={wanted}". W przeciwnym razie dodać kolumnę.',
  },
  'heading-map-unused': {
    says: '--map "{heading}={means}" nie pasuje do żadnej tabeli tego zlecenia.',
    remedy: 'Napisać nagłówek tak, jak stoi w pliku, i znaczenie z docs/columns.md.',
  },
  'workbook-broken': {
    says: 'Skoroszytu nie da się odczytać: {problem}.',
    remedy: 'Otworzyć go w arkuszu kalkulacyjnym i zapisać jako XLSX.',
  },
  'workbook-unsafe': {
    says: 'Skoroszyt odrzucono: {problem}.',
    remedy: 'Lista połączeń nie potrzebuje niczego takiego. Zapytać, skąd plik pochodzi; skopiować wartości do nowego skoroszytu.',
  },
  'workbook-old': {
    says: 'Skoroszyt jest zamknięty hasłem albo starego rodzaju (XLS).',
    remedy: 'Zapisać go jako XLSX bez hasła albo jako CSV.',
  },
  'sheet-missing': { says: 'Skoroszyt nie ma arkusza „{sheet}”; ma {sheets}.', remedy: 'Poprawić nazwę po znaku #.' },
  'sheet-unclear': { says: 'W grę wchodzi kilka arkuszy ({wanted}): {sheets}.', remedy: 'Wskazać ten właściwy, po znaku #: {example}' },
  'rows-hidden': {
    says: '{rows, plural, one {Odczytano też jeden ukryty wiersz} few {Odczytano też # ukryte wiersze} many {Odczytano też # ukrytych wierszy} other {Odczytano też # ukrytego wiersza}}.',
    remedy: 'Usunąć to, co już nie obowiązuje: ukrycie nie wyjmuje wiersza z listy.',
  },
  'cell-error': { says: 'Komórka pokazuje błąd, a nie wartość.', remedy: 'Naprawić formułę w arkuszu albo wpisać wartość.' },
  'bolt-list-uneven': {
    says: 'Wiersze połączenia {tag} nie dają każdej śrubie własnego numeru i miejsca; obejrzeć: {bolts}.',
    remedy: 'Ponumerować śruby od 1 bez przerw, po jednym wierszu, wszystkie z x i y albo żadna.',
  },
  'column-ignored': { says: 'Kolumny „{heading}” nie zrozumiano i się jej nie używa.', remedy: 'Zmienić jej nazwę, jeśli jest ważna.' },
  'unit-unknown': {
    says: 'Jednostka „{unit}” nie jest jedną z: {wanted}.',
    remedy: 'Napisać jednostkę w nawiasie w nagłówku albo za liczbą.',
  },
  'unit-missing': { says: 'Liczba nie ma jednostki.', remedy: 'Napisać jedną z {wanted} w nawiasie w nagłówku albo za liczbą.' },
  'cell-empty': { says: 'Ta komórka jest pusta.', remedy: 'Wpisać: {wanted}.' },
  'cell-formula': {
    says: 'Komórka zawiera formułę, a nie wartość.',
    remedy: 'Wkleić w jej miejsce wartość albo przeliczyć arkusz i zapisać; formuł nigdy się tu nie wykonuje.',
  },
  'number-wanted': { says: 'To nie jest liczba.', remedy: 'Wpisać: {wanted}.' },
  'quantity-wanted': { says: 'To nie jest liczba.', remedy: 'Wpisać liczbę, w {units}.' },
  'number-outside': { says: 'Tej liczby nie można użyć.', remedy: 'Wpisać liczbę od {low} do {high}.' },
  'whole-number-outside': { says: 'Tej liczby nie można użyć.', remedy: 'Wpisać liczbę całkowitą od {low} do {high}.' },
  'number-ambiguous': {
    says: '„{read}” można odczytać jako liczbę dziesiętną albo z separatorem tysięcy.',
    remedy: 'Napisać bez separatora tysięcy; w skoroszycie wpisać jako liczbę, nie jako tekst.',
  },
  'number-absurd': { says: 'Liczba jest niewiarygodna.', remedy: 'Wpisać: {wanted}, powyżej zera i do {largest}; sprawdzić jednostkę.' },
  'label-too-long': {
    says: 'Ta nazwa ma więcej niż {most} znaków lub więcej niż jeden wiersz.',
    remedy: 'Skrócić: dziennik przechowuje oznaczenia, numery seryjne i partie o długości do {most} znaków.',
  },
  'word-unknown': { says: 'To słowo nie jest tu znane.', remedy: 'Wpisać jedno z: {wanted}.' },
  'positions-unreadable': { says: 'Śrub nie da się odczytać.', remedy: 'Napisać liczbę (8) albo pozycje (1-4, 7, 9-12).' },
  'layout-unreadable': { says: 'Układu nie da się odczytać.', remedy: 'Napisać „ring” albo rzędy × kolumny (2x4).' },
  'layout-contradicts-bolts': { says: 'Układ {layout} nie ma {bolts} śrub.', remedy: 'Poprawić jedno z dwojga.' },
  'joint-contradicts-itself': {
    says: 'Połączenie {tag} opisano dwa razy: {field} to „{first}” w jednym wierszu i „{second}” w innym.',
    remedy: 'Wiersze jednego połączenia mogą się różnić tylko tym, co należy do podgrupy: pozycje, wymiar, gatunek, długość, partia.',
  },
  'flange-contradicts': {
    says: '{flange} ma {field} {table}; lista mówi {given}.',
    remedy: 'Poprawić listę albo zostawić komórkę pustą: wypełni ją tabela normy.',
  },
  'flange-unreadable': { says: 'Kołnierza nie da się odczytać.', remedy: 'Napisać „B16.5 NPS 8 Class 300” albo „EN 1092-1 DN80 PN16”.' },
  'friction-half-given': { says: 'Tarcie podano tylko w połowie.', remedy: 'Wpisać: {wanted}.' },
  'friction-implausible': {
    says: 'Żaden łącznik nie ma takiej wartości ({what}); zdarza się od {low} do {high}.',
    remedy: 'Porównać liczbę ze świadectwem i sprawdzić, czy stoi we właściwej kolumnie.',
  },
  'yaml-broken': { says: 'Pliku nie da się odczytać: {problem}.', remedy: 'Porównać wiersz z przykładem, który pisze „clampwright init”.' },
  'yaml-unknown-key': { says: 'Słowo „{key}” nie jest tu znane.', remedy: 'Porównać z przykładem, który pisze „clampwright init”.' },
  'yaml-wrong-value': { says: 'Tej wartości nie można użyć.', remedy: 'Wymagane: {wanted}.' },
  'date-unreadable': { says: 'To nie jest data z kalendarza.', remedy: 'Napisać rok-miesiąc-dzień: 2026-11-25.' },
  'certificates-unclear': {
    says: 'Narzędzie {serial} ma dwa świadectwa z {day}: {first} i {second}. Nie wybrano żadnego.',
    remedy: 'Zostawić ważne albo poprawić datę drugiego.',
  },
  'certificate-missing': {
    says: 'Narzędzie {serial} nie ma świadectwa z tabelą.',
    remedy: 'Podać tu świadectwo i tabelę albo umieścić je w pliku świadectw.',
  },
  'certificate-of-no-tool': {
    says: 'Lista ma świadectwo {serial}, a to nie jest narzędzie tego zlecenia.',
    remedy: 'Nic, jeśli narzędzia się tu nie używa; w przeciwnym razie porównać numery seryjne.',
  },
  'record-joint-unknown': { says: 'W tym zleceniu nie wydano karty dla połączenia „{tag}”.', remedy: 'Połączenia z kartami: {joints}.' },
  'record-step-unknown': { says: 'Połączenie nie ma kroku „{step}”.', remedy: 'Jego kroki: {steps}.' },
  'record-bolt-unknown': { says: 'Połączenie nie ma śruby {bolt}.', remedy: 'Jego śruby to 1 do {bolts}.' },
  'records-known': {
    says: 'Plik {name} wpisano już do tej książki, bajt po bajcie.',
    remedy: 'Wpisać tylko to, co nowe, jako osobny plik.',
  },
  'entered-lot-unknown': {
    says: 'Partia {lot} nie jest zarejestrowana w tej książce, a plik nie mówi, czym są jej zestawy.',
    remedy: 'Napisać wymiar, gatunek i system za „designation”, obok partii.',
  },
  'entered-tool-unknown': {
    says: 'Narzędzie {tool} nie jest zarejestrowane ani w tej książce, ani w książce zakładu.',
    remedy: 'Porównać numer seryjny albo najpierw zarejestrować narzędzie: clampwright register.',
  },
  'serial-twice': {
    says: 'Numer seryjny {serial} jest wpisany dwa razy.',
    remedy: 'Narzędzie występuje raz; wymienić jego tabelę, nie narzędzie.',
  },
  'lot-twice': { says: 'Partia {lot} jest wpisana dwa razy.', remedy: 'Dać każdej partii własną nazwę.' },
  'members-joint-unknown': {
    says: 'members.yaml mówi o połączeniu {joint}, którego lista połączeń nie ma albo które pominięto.',
    remedy: 'Napisać tabliczkę jak na liście połączeń.',
  },
  'members-twice': { says: 'Dwa wpisy mówią, co ściska połączenie {joint}.', remedy: 'Zostawić jeden z nich.' },
  'members-no-flange': {
    says: 'Połączenie {joint} nie jest normowym kołnierzem z uszczelką, a jego wymiarów nie podano.',
    remedy: 'Podać kołnierz na liście połączeń, a uszczelkę tutaj, albo podać pierścień, blachy lub macierz.',
  },
  'row-broken': {
    says: 'Wiersz ma komórek: {cells}; nagłówków jest {wanted}.',
    remedy: 'Szukać brakującego lub zbędnego separatora albo przecinka w liczbie.',
  },
} satisfies NoticeTexts<'input'>;
