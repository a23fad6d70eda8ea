import type { NoticeTexts } from '../notice-texts.ts';

export const jointTexts = {
  'no-bolts': { says: 'Połączenie nie ma śrub.', remedy: 'Wpisać, ile ma śrub albo do którego kołnierza należy.' },
  'positions-wrong': {
    says: 'Podgrupy nie składają się na wszystkie śruby połączenia, {boltCount} (brak: {missing}; podwójnie: {twice}).',
    remedy: 'Przypisać każdą śrubę do dokładnie jednej podgrupy.',
  },
  'sequence-wrong': {
    says: 'Kolejność inżyniera nie wymienia każdej z {boltCount} śrub raz.',
    remedy: 'Poprawić kolejność; nie uzupełnia się jej zgadywaniem.',
  },
  'tools-at-once-wrong': {
    says: 'Narzędzia naraz ({tools}) nie dzielą śrub ({boltCount}) po równo; plan używa jednego.',
    remedy: 'Użyć takiej liczby narzędzi, która dzieli śruby.',
  },
  'tool-unknown': { says: 'Narzędzia {serial} nie ma wśród narzędzi zlecenia.', remedy: 'Dodać je z tabelą albo wskazać inne.' },
  'no-tool': { says: 'Zlecenie nie ma narzędzia z tabelą nastaw.', remedy: 'Dodać narzędzie z tabelą z jego świadectwa.' },
  'tool-chart-faulty': {
    says: 'Tabela narzędzia {serial} ma błędy, więc nic się z niej nie odczytuje.',
    remedy: 'Naprawić tabelę; jej błędy są wypisane przy narzędziu.',
  },
  'several-tools': {
    says: 'Żadne pojedyncze narzędzie nie obejmuje wszystkich kroków; plan używa: {tools}.',
    remedy: 'Wziąć wszystkie i przy każdym kroku czytać na karcie, które.',
  },
  'lot-unknown': { says: 'Partii {lot} nie ma wśród partii zlecenia.', remedy: 'Dodać partię z jej świadectwem albo badaniem.' },
  'lot-failed': {
    says: 'Partia {lot} nie przeszła badania.',
    remedy: 'Nie używać jej. Wziąć inną partię albo zbadać ponownie, gdy przyczyna będzie znana.',
  },
  'turned-not-tested': {
    says: 'Partię {lot} badano, obracając {tested, select, head {łeb} other {nakrętkę}}; tutaj obraca się {turned, select, head {łeb} other {nakrętkę}}. Moment jest ważny tylko tak, jak badano.',
    remedy:
      'Obracać {tested, select, head {łeb} other {nakrętkę}} albo zbadać partię, obracając {turned, select, head {łeb} other {nakrętkę}}.',
  },
  'datum-missing': {
    says: 'Nie podano, gdzie jest śruba 1, w którą stronę biegną numery i z której strony się patrzy.',
    remedy: 'Wpisać punkt odniesienia albo brygada oznaczy śrubę 1 na stali i to potwierdzi.',
  },
  'permit-missing': {
    says: 'Połączenie ciśnieniowe wymaga pozwolenia na odcięcie lub otwarcie rurociągu, zanim ktokolwiek dotknie nakrętki; żadnego nie wpisano.',
    remedy: 'Wpisać numer pozwolenia.',
  },
  'zone-missing': {
    says: 'Nie podano, czy połączenie leży w obszarze zagrożonym wybuchem.',
    remedy: 'Wpisać strefę każdego połączenia albo „zone: none” dla całego zlecenia.',
  },
  'hot-work-missing': {
    says: 'Narzędzie {tool} jest źródłem zapłonu; w strefie {zone} wymaga pozwolenia na prace gorące i pomiaru gazów.',
    remedy: 'Wpisać oba numery albo zaplanować narzędzie bez prądu.',
  },
  'wet-retest': {
    says: 'Podano deszcz. Mokre lub zardzewiałe łączniki nie mają tarcia, z którym je badano.',
    remedy: 'Trzymać partie sucho; mokrą partię zbadać ponownie, zanim się ją dokręci.',
  },
  'arm-length-unknown': {
    says: 'Ramię narzędzia {serial} nie ma podanej długości, więc jego siła reakcji jest nieznana.',
    remedy: 'Zmierzyć prostopadle od zabieraka do miejsca styku i wpisać.',
  },
  'arm-overloaded': {
    says: 'Krok wymaga {torque}; ramię reakcyjne jest dopuszczone do {rating}.',
    remedy: 'Wziąć ramię dopuszczone do tego momentu.',
  },
  'reaction-point-overloaded': {
    says: 'Ramię naciska siłą {force}; jego punkt podparcia może przyjąć {limit}.',
    remedy: 'Wybrać mocniejszy punkt podparcia albo dłuższe dopuszczone ramię. Nigdy nie przedłużać ramienia na budowie.',
  },
  'reaction-point-unknown': {
    says: 'Ramię będzie naciskać siłą {force}; nie wskazano punktu podparcia.',
    remedy: 'Wskazać taki, który to przeniesie: dokręcona sąsiednia nakrętka, krawędź kołnierza, specjalnie zrobiony opór.',
  },
  'socket-does-not-fit': {
    says: 'Nasadka {socket} zahacza o sąsiedni sześciokąt przy rozstawie {pitch}: brakuje {lacking}.',
    remedy: 'Użyć cienkościennej nasadki dopuszczonej do tego momentu.',
  },
  'socket-meets-wall': {
    says: 'Nasadka {socket} zahacza o ścianę, {wall} od śruby.',
    remedy: 'Użyć mniejszej nasadki albo obracać drugą część.',
  },
  'socket-unknown': {
    says: 'Przy narzędziu nie wpisano nasadki o rozwartości {acrossFlats}.',
    remedy: 'Wpisać jej średnicę zewnętrzną, żeby można było sprawdzić luz.',
  },
  'yield-likely': {
    says: '{share} śrub przekroczyłoby przy dokręcaniu granicę plastyczności.',
    remedy: 'Sprawdzić moment, tarcie i gatunek; wziąć nastawę lub smar z zapasem.',
  },
  'below-target-likely': {
    says: '{share} śrub może zostać poniżej docelowej siły sprężenia.',
    remedy: 'Pomaga mniejszy rozrzut: zbadana partia, lepsze narzędzie; albo zgoda inżyniera.',
  },
  'torque-unit-doubt': {
    says: '{torque} znaczyłoby {basis, select, yield {śrubę obróconą poza granicę plastyczności przy współczynniku k {k}} other {współczynnik k {k}}}; odczytane w drugiej jednostce momentu byłoby zwykłą liczbą.',
    remedy: 'Sprawdzić, czy liczba jest w N·m, czy w lbf·ft.',
  },
  'torque-implausible': {
    says: '{torque} znaczyłoby {basis, select, yield {śrubę obróconą poza granicę plastyczności przy współczynniku k {k}} other {współczynnik k {k}, jakiego nie ma żaden smar}}.',
    remedy: 'Sprawdzić moment, siłę sprężenia i wymiar ze specyfikacją.',
  },
  'engineer-override': {
    says: 'Zamiast naszej wartości obowiązuje ta od inżyniera ({what}).',
    remedy: 'Nic do zrobienia; na planie i karcie pokazana jako jego.',
  },
  'figure-not-used': {
    says: 'Lista podaje wartość ({what}); ten zestaw reguł jej nie używa i plan się nią nie kieruje.',
    remedy:
      'Pominąć ją albo wskazać zestaw reguł, który ją przyjmuje (as-specified dla momentu lub siły sprężenia, flange-bolt-stress dla naprężenia śrub).',
  },
  'friction-from-table': {
    says: 'Tarcie wzięto z tabeli ({source}), a nie z badania tej partii.',
    remedy: 'Woleć badanie: tabele dla tych samych słów różnią się o połowę.',
  },
  'bolt-too-short': {
    says: 'Długość śruby {length} nie wystarcza: {thickness} ściskanej grubości i nakrętka {nut} wymagają co najmniej {needed}.',
    remedy: 'Użyć dłuższej śruby albo poprawić długość lub ściskaną grubość (Σt: blachy, przekładki i podkładki).',
  },
  'bolt-below-clamp': {
    says: 'Długość śruby {length} jest mniejsza niż ściskana grubość {thickness}.',
    remedy: 'Użyć dłuższej śruby albo poprawić długość lub ściskaną grubość (Σt: blachy, przekładki i podkładki).',
  },
  'clamp-below-thread': {
    says: 'Długość śruby {length} zostawia za mało na nakrętkę i jeden skok ponad {thickness} ściskanej grubości.',
    remedy: 'Sprawdzić długość i ściskaną grubość.',
  },
  'qualification-expired': {
    says: 'Kwalifikacje osoby {person} straciły ważność {until}.',
    remedy: 'Odnowić je albo niech pracę wykona ktoś z kwalifikacjami.',
  },
} satisfies NoticeTexts<'joint'>;
