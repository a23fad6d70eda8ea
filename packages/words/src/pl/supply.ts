import type { NoticeTexts } from '../notice-texts.ts';

export const supplyTexts = {
  'battery-rating': {
    says: 'Akumulator {serial}: napięcie znamionowe lub pojemność nieznane albo niedorzeczne.',
    remedy: 'Odczytać oba z etykiety, V i Ah.',
  },
  'battery-health': {
    says: 'Akumulator {serial}: stan nie jest między 0 a 100 %.',
    remedy: 'Dla nowego wpisać 100 %; mniej według jego cykli.',
  },
  'battery-gauge': {
    says: 'Akumulator {serial}: „{lit}” to nie odczyt wskaźnika o czterech kreskach.',
    remedy: 'Policzyć świecące kreski: od 0 do 4.',
  },
  'battery-temperature': {
    says: 'Akumulator {serial}: jego temperatura jest niedorzeczna.',
    remedy: 'Wpisać °C akumulatora, nie powietrza.',
  },
  'battery-charge': {
    says: 'Akumulator {serial}: jego naładowanie jest poniżej pustego albo powyżej pełnego.',
    remedy: 'Odczytać wskaźnik ponownie: od 0 do 4 kresek.',
  },
  'battery-cells': {
    says: 'Akumulator {serial}: jego ogniwa, prąd lub odcięcie narzędzia albo moment nie są większe od zera.',
    remedy: 'Ogniwa wziąć z karty danych akumulatora, prąd i odcięcie ze stanowiska.',
  },
  'gauge-reading': { says: '„{lit}” to nie odczyt wskaźnika o czterech kreskach.', remedy: 'Policzyć świecące kreski: od 0 do 4.' },
  'energy-impossible': {
    says: 'Energia pełnego akumulatora jest nieznana albo nie większa od zera.',
    remedy: 'Odczytać V i Ah z etykiety.',
  },
  'draw-impossible': {
    says: 'Pobór śruby nie jest większy od zera albo jego najmniejsza wartość przekracza największą.',
    remedy: 'Wyznaczyć go z momentu i obrotu albo z zapisanych spadków wskaźnika.',
  },
  'battery-no-working': {
    says: 'Akumulator {serial} ma {celsius} °C; pracuje od {low} do {high} °C.',
    remedy: 'Wziąć trzymany w cieple albo dać mu ostygnąć.',
  },
  'battery-no-charging': {
    says: 'Akumulator {serial} ma {celsius} °C; ładować go wolno od {low} do {high} °C.',
    remedy: 'Nigdy nie ładować przyniesionego z mrozu: najpierw dać mu się ogrzać albo ostygnąć.',
  },
  'battery-first-charge': {
    says: 'Akumulator {serial} jest nowy i naładowany tylko częściowo.',
    remedy: 'Przed pierwszą pracą naładować do pełna.',
  },
  'battery-low': {
    says: 'Akumulator {serial} pokazuje jedną kreskę albo żadnej: to niczego nie gwarantuje.',
    remedy: 'Zdecydować teraz: wymienić czy wystarczy na pozostałe śruby? Nigdy nie zaczynać nim kroku na kąt.',
  },
  'battery-cannot-push': {
    says: 'Krok wymaga {torque}; akumulator {serial} przy {celsius} °C i swoim naładowaniu może dać {greatest}.',
    remedy: 'Wziąć ciepły i pełny akumulator, większy albo inne narzędzie. Nie próbować tej śruby.',
  },
  'batteries-too-few': {
    says: '{pulls, plural, one {# pociągnięcie nie jest pokryte} few {# pociągnięcia nie są pokryte} many {# pociągnięć nie jest pokrytych} other {# pociągnięcia nie jest pokryte}} akumulatorami na miejscu; {more, plural, one {potrzeba jeszcze # pełnego} few {potrzeba jeszcze # pełnych} many {potrzeba jeszcze # pełnych} other {potrzeba jeszcze # pełnego}}.',
    remedy: 'Przynieść je albo naładować przed pierwszym połączeniem.',
  },
  'batteries-too-weak': {
    says: 'Żaden akumulator na miejscu nie zrobi na pewno ani jednej z tych śrub.',
    remedy: 'Wziąć narzędzie z większym akumulatorem albo sieciowe.',
  },
  'joint-not-covered': {
    says: 'Akumulatory na miejscu nie pokrywają każdego kroku połączenia {joint}.',
    remedy: 'Nie zaczynać go, dopóki nie pokrywają.',
  },
  'pull-without-draw': {
    says: 'Nie wiadomo, ile śruba {bolt} połączenia {joint} pobiera z akumulatora.',
    remedy: 'Wpisać jej moment i obrót.',
  },
  'draw-assumed': {
    says: 'Pobór śruby opiera się na {drops, plural, =0 {żadnym zapisanym spadku} one {# zapisanym spadku} few {# zapisanych spadkach} many {# zapisanych spadkach} other {# zapisanego spadku}} wskaźnika: to założenie.',
    remedy: 'Zapisywać śrubę, przy której wskaźnik opada; każdy spadek go uściśla.',
  },
  'drop-count': { says: '„{bolts}” śrub między dwoma spadkami wskaźnika być nie może.', remedy: 'Wpisać, ile śrub zrobiono między nimi.' },
  'log-too-short': {
    says: 'Zapis, w którym jest {found, plural, =0 {nic} one {# odczyt} few {# odczyty} many {# odczytów} other {# odczytu}}, mówi za mało; potrzeba {least}.',
    remedy: 'Zapisać więcej ładowań lub zleceń. Z tak niewielu niczego się nie szacuje.',
  },
  'log-impossible': {
    says: 'Zapis zawiera odczyty poniżej zera albo żadnych, albo jego ufność nie jest między 50 a 100 %.',
    remedy: 'Poprawić wpis. Z takiego, jaki jest, niczego się nie uczy.',
  },
  'works-all-alike': {
    says: 'Wszystkie zlecenia wymagały tej samej pracy: nie da się oddzielić poboru stałego od sprawności.',
    remedy: 'Zapisać też zlecenia o innym momencie lub obrocie.',
  },
  'socket-reading': {
    says: 'Ładowanie w drodze: bezpiecznik gniazda albo prąd nie jest większy od zera.',
    remedy: 'Odczytać bezpiecznik na gnieździe lub w skrzynce; nigdy nie zgadywać.',
  },
  'socket-fuse': {
    says: 'Ładowanie w drodze pobierałoby {current} A; gniazdo ma bezpiecznik {fuse} A.',
    remedy:
      'Ładować mniejszym prądem albo z gniazda o większym bezpieczniku. Nigdy nie wkładać większego bezpiecznika do tego samego gniazda.',
  },
  'socket-near-fuse': {
    says: 'Ładowanie w drodze pobiera {current} A z gniazda z bezpiecznikiem {fuse} A: więcej, niż powinno ono dawać przez dłuższy czas.',
    remedy: 'Po jednym akumulatorze naraz, przy pracującym silniku.',
  },
  'supply-reading': {
    says: 'Narzędzie {serial}: brak odczytu jego zasilania albo odczyt nie jest większy od zera.',
    remedy: 'Zmierzyć przy narzędziu, gdy pracuje.',
  },
  'supply-weak': {
    says: 'Narzędzie {serial}: jest {what}; wymagane {wanted}.',
    remedy: 'Krótszy i grubszy przewód lub wąż, inne gniazdo albo większe źródło.',
  },
  'supply-unprotected': {
    says: 'Narzędzie {serial}: brak wyłącznika różnicowoprądowego.',
    remedy: 'Włączyć go między gniazdo a narzędzie, zanim się je podłączy.',
  },
  'supply-dry-air': {
    says: 'Narzędzie {serial}: jego powietrze nie niesie oleju.',
    remedy: 'Napełnić olejarkę: suchy silnik traci moment.',
  },
  'supply-hose-changed': {
    says: 'Narzędzie {serial}: jego wąż ma inną długość niż przy wzorcowaniu.',
    remedy: 'Przed pierwszą śrubą sprawdzić narzędzie z tym wężem.',
  },
  'supply-hose': {
    says: 'Narzędzie {serial}: węże są dopuszczone do {rating} bar; może do nich dojść {wanted} bar.',
    remedy: 'Wziąć węże i złącza na ciśnienie pompy; szukać nacięć i załamań.',
  },
  'valve-impossible': {
    says: 'Zasuwa {tag}: wymiar, współczynnik albo obciążenie nie jest większe od zera.',
    remedy: 'Przeczytać ponownie jej kartę danych.',
  },
  'valve-limit-missing': {
    says: 'Zasuwa {tag}: nie wpisano największego momentu na wrzecionie od właściciela.',
    remedy: 'Uzyskać go na piśmie; do tego czasu ręcznie.',
  },
  'valve-permission-missing': { says: 'Zasuwa {tag}: nikt z ruchu nie pozwolił jej poruszyć.', remedy: 'Wpisać, kto pozwolił i na kiedy.' },
  'valve-direction-missing': {
    says: 'Zasuwa {tag}: nie wpisano, w którą stronę się otwiera.',
    remedy: 'Obejrzeć koło: niektóre otwierają się zgodnie z ruchem wskazówek zegara.',
  },
  'valve-thermal-binding': {
    says: 'Zasuwę {tag} zamknięto w innej temperaturze: klin może być zakleszczony.',
    remedy: 'Nie robić nic na siłę. Zapytać ruch; dać temperaturom się wyrównać.',
  },
  'valve-needs-more': {
    says: 'Zasuwa {tag} wymaga {needed}; właściciel dopuszcza {limit}.',
    remedy: 'Poprosić ruch o zdjęcie ciśnienia albo rozruszać dławnicę i wrzeciono.',
  },
  'valve-may-need-more': {
    says: 'Zasuwa {tag} może wymagać {needed}; właściciel dopuszcza {limit}.',
    remedy: 'Jeśli przy granicy się nie rusza, przerwać i zgłosić. Nastawy się nie podnosi.',
  },
  'valve-stem-yields': {
    says: 'Zasuwa {tag}: przy granicy właściciela wrzeciono ma {found}; płynie przy {allowed}.',
    remedy: 'Poprosić właściciela o granicę, którą wrzeciono wytrzyma.',
  },
  'valve-long-unmoved': {
    says: 'Zasuwy {tag} nie ruszano od lat.',
    remedy: 'Rozruszać łagodnie, kilka obrotów tam i z powrotem, ręcznie albo na najniższej nastawie.',
  },
  'valve-turns-differ': {
    says: 'Zasuwa {tag}: obrotów {turns} według skoku i gwintu; zasuwa wodociągowa tej wielkości robi od {low} do {high}.',
    remedy: 'Liczba zwojów lub skok mogą być błędne. Policzyć obroty ręcznie, zanim założy się narzędzie.',
  },
  'valve-few-turns': {
    says: 'Zasuwa {tag} robi obrotów: {turns}; oba końce należą do ręki i dla narzędzia nic nie zostaje.',
    remedy: 'Obracać ręcznie.',
  },
  'valve-by-hand': { says: 'Zasuwa {tag}: żadna nastawa nie leży poniżej {limit}.', remedy: 'Obracać ręcznie.' },
} satisfies NoticeTexts<'supply'>;
