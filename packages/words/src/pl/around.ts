import type { NoticeTexts } from '../notice-texts.ts';

export const aroundTexts = {
  'loosening-torque': {
    says: 'Moment, którym dokręcono, nie jest większy od zera.',
    remedy: 'Wpisać go albo siłę sprężenia i tarcie, z których wynika.',
  },
  'loosening-unknown': {
    says: 'Nic nie mówi, czym dokręcono {joint}.',
    remedy: 'Najpierw zaplanować albo wpisać moment i narzędzie; potem luzować.',
  },
  'loosening-release-missing': {
    says: 'Połączenie ciśnieniowe otwiera się dopiero po wykazaniu odcięcia; nie wpisano pozwolenia albo osoby, która je zwolniła.',
    remedy: 'Wpisać pozwolenie na odcięcie lub otwarcie rurociągu i nazwisko osoby, która je zwolniła.',
  },
  'loosening-setting-only': {
    says: '{setting} służy tylko do luzowania.',
    remedy: 'Nigdy nie wolno nią dokręcać: zablokować kierunek i przestawić z powrotem, zanim dokręci się następną śrubę.',
  },
  'loosening-tool-small': {
    says: 'Zerwanie może wymagać {needed}; największa nastawa to {largest}.',
    remedy: 'Wziąć większe narzędzie albo multiplikator. Nigdy nie przedłużać ramienia, nigdy nie uderzać narzędzia pod obciążeniem.',
  },
  'loosening-tool-near': {
    says: 'Zerwanie może wymagać {needed}: prawie wszystkiego, co narzędzie ma, {largest}.',
    remedy: 'Mieć w pogotowiu większe narzędzie i środek penetrujący.',
  },
  'loosening-socket': {
    says: 'Zerwanie może wymagać {needed}; nasadka i zabierak są dopuszczone do {rating}.',
    remedy: 'Wziąć nasadkę udarową i zabierak następnej wielkości.',
  },
  'loosening-bolt': {
    says: 'Zerwanie może wymagać {needed}; zapieczona śruba wytrzyma tylko {limit}.',
    remedy: 'Przy tym momencie przerwać i zmienić sposób: środek penetrujący, grzanie za pozwoleniem, przeciąć lub rozłupać nakrętkę.',
  },
  'loosening-penetrant': {
    says: 'Takie nakrętki się zapiekają lub pękają.',
    remedy: 'Nasączyć środkiem penetrującym, oczyścić wystające zwoje i mieć w pogotowiu rozłupywacz do nakrętek.',
  },
  'lot-test-missing': {
    says: '{file} nie zawiera badania przydatności partii {lot}.',
    remedy: 'Wpisać serię w suitability z oznaczeniem tej partii. Do tego czasu jej połączenia mają stop.',
  },
  'lot-friction-twice': {
    says: 'Dla partii {lot} wpisano tarcie i badanie przydatności; liczy się badanie.',
    remedy: 'Zostawić jedno z dwojga.',
  },
  'lot-test-few': {
    says: 'Partia {lot}: {found, plural, =0 {nie zbadano żadnego zestawu} one {zbadano # zestaw} few {zbadano # zestawy} many {zbadano # zestawów} other {zbadano # zestawu}}; wymagane: {wanted}.',
    remedy: 'Zbadać więcej zestawów tej partii.',
  },
  'lot-test-reading': {
    says: 'Partia {lot}, zestaw {assembly}: odczyt nie jest większy od zera.',
    remedy: 'Przeczytać zapis ponownie albo zbadać inny zestaw.',
  },
  'lot-test-size': { says: 'Partia {lot}: brak wymiaru lub zadanej siły sprężenia.', remedy: 'Wpisać jedno i drugie.' },
  'lot-k-class-none': {
    says: 'Partia {lot} nie spełnia żadnej klasy k: k_m = {mean}, V_k = {variation}.',
    remedy: 'Użyć tylko z metodą, która nie potrzebuje tarcia, albo zwrócić.',
  },
  'lot-force-low': {
    says: 'Partia {lot}: zestaw osiągnął {found}; wymagane: {wanted}.',
    remedy: 'Partia nie przeszła: odłożyć ją i zbadać inną.',
  },
  'lot-rotation-low': {
    says: 'Partia {lot}: zestaw obrócił się mniej, niż musi, zanim puścił.',
    remedy: 'Partia nie przeszła: odłożyć ją i zbadać inną.',
  },
  'lot-rotation-untested': {
    says: 'Partia {lot}: nie zmierzono zapasu obrotu.',
    remedy: 'Zmierzyć go tam, gdzie metoda obraca śruby poza granicę plastyczności.',
  },
  'lot-test-future': { says: 'Partia {lot} miała być zbadana {tested}, po dniu pracy.', remedy: 'Przeczytać datę ponownie.' },
  'lot-test-old': { says: 'Badanie partii {lot} ma {days} dni; dopuszcza się {allowed}.', remedy: 'Zbadać ponownie: smary się starzeją.' },
  'lot-test-temperature': {
    says: 'Śruby partii {lot} są o {apart} °C od temperatury, w której je badano.',
    remedy: 'Badać w temperaturze pracy; przy różnicy ponad {usual} °C tarcie jest inne.',
  },
  'lot-retest': {
    says: 'Partia {lot} po badaniu zmokła lub została ponownie nasmarowana.',
    remedy: 'Jej tarcie jest nieznane: zbadać ponownie przed użyciem.',
  },
  'sample-none': { says: 'Żadne połączenie nie wymaga próbki.', remedy: 'Wpisać execution-class w job.yaml albo podać liczbę śrub.' },
  'sample-size': { says: 'Nie można wylosować „{size}” śrub z {bolts}.', remedy: 'Podać liczbę całkowitą od 1 do liczby śrub.' },
  'sample-seed': { says: '„{seed}” to nie ziarno.', remedy: 'Podać liczbę całkowitą od 0 i ją zapisać.' },
  'sequential-limits': { says: 'Plan typu {type} obejmuje od {least} do {most} śrub.', remedy: 'Wpisać linie normy dla tego typu.' },
  'sequential-short': { says: 'Linie nie sięgają {most} śrub.', remedy: 'Wpisać przyjęcie i odrzucenie dla każdej liczby śrub.' },
  'sequential-crossed': {
    says: 'Po {bolts} śrubach ta sama liczba by przyjmowała i odrzucała.',
    remedy: 'Przeczytać obie linie ponownie.',
  },
  'sequential-undecided': {
    says: 'Po {most} śrubach plan musi przyjąć albo odrzucić.',
    remedy: 'Wpisać obie granice dla ostatniej śruby, różne o jeden.',
  },
  'sequential-over': {
    says: 'Wynik jest już ustalony ({verdict}): żadna dalsza śruba się nie liczy.',
    remedy: 'Zacząć inny plan, jeśli ma być obejrzane więcej.',
  },
  'sequential-twice': { says: 'Śrubę {bolt} już obejrzano.', remedy: 'Wziąć następną wylosowaną śrubę; śruba liczy się raz.' },
  'gap-none': { says: 'Nie odczytano żadnej szczeliny.', remedy: 'Odczytać ją w 4 lub 8 miejscach wokół kołnierza.' },
  'gap-points': { says: 'Przejście {pass}: liczba odczytów {points}.', remedy: 'Odczytać szczelinę w 4 lub 8 miejscach.' },
  'gap-negative': { says: 'Przejście {pass}, miejsce {point}: szczelina nie jest mniejsza od zera.', remedy: 'Odczytać ponownie.' },
  'gap-uneven': {
    says: 'Szczelina wokół kołnierza różni się o {spread}; dopuszcza się {allowed}.',
    remedy: 'Przerwać. Odciążyć wąską stronę, dociągnąć szeroką na niskich nastawach i odczytać ponownie.',
  },
} satisfies NoticeTexts<'around'>;
