import type { NoticeTexts } from '../notice-texts.ts';

export const modelTexts = {
  'model-broken': {
    says: 'Modelu nie da się odczytać: plik jest uszkodzony lub niepełny.',
    remedy: 'Wyeksportować go jeszcze raz z programu do modelowania.',
  },
  'model-text': {
    says: 'Tekst modelu jest tu uszkodzony: {problem}.',
    remedy: 'Wyeksportować jeszcze raz; jeśli przyszedł pocztą, poprosić o spakowany.',
  },
  'model-not-step': {
    says: 'To nie jest plik IFC w tekście STEP.',
    remedy: 'Wyeksportować IFC (końcówka .ifc), nie IFC-XML ani obraz modelu.',
  },
  'model-packed': { says: 'Model jest spakowany.', remedy: 'Rozpakować go: plik IFC jest w środku.' },
  'model-schema': { says: 'Schematu {schema} się nie czyta.', remedy: 'Wyeksportować jako IFC 2x3, IFC 4 albo IFC 4.3.' },
  'model-unit-missing': { says: 'Model nie podaje jednostki długości; przyjęto metry.', remedy: 'Sprawdzić znany wymiar.' },
  'model-without-bolts': {
    says: 'Model nie zawiera śruby, którą dałoby się zrozumieć.',
    remedy:
      'Wyeksportować ze śrubami jako łącznikami mechanicznymi (IfcMechanicalFastener); wiele programów pomija je, jeśli się o nie nie poprosi.',
  },
  'fastener-unreadable': { says: 'Tego łącznika nie da się odczytać.', remedy: 'Obejrzeć go w modelu.' },
  'fastener-no-bolt': { says: 'To nie śruba, lecz {kind}, i zostaje pominięte.', remedy: 'Nic, jeśli tak jest.' },
  'fastener-without-place': {
    says: 'Nie da się powiedzieć, gdzie jest ten łącznik: jego położenia brakuje, zapętla się ono albo wisi na siatce.',
    remedy: 'Wyeksportować z położeniami lokalnymi albo wpisać połączenie ręcznie.',
  },
  'fastener-without-size': {
    says: 'Nie znaleziono tu wymiaru śruby; odczytano, a wymiarem nie jest: {tried}.',
    remedy: 'Uzupełnić wymiar na liście, która jest zapisywana, albo nadać łącznikowi w modelu średnicę nominalną.',
  },
  'fastener-without-grade': {
    says: 'Nie znaleziono gatunku dla śrub „{tag}”.',
    remedy: 'Uzupełnić gatunek na liście, która jest zapisywana.',
  },
  'fastener-contradicts': {
    says: 'Model mówi o tym łączniku dwie rzeczy ({what}): {first} oraz {second}. Nie przyjęto żadnej.',
    remedy: 'Zapytać modelującego i uzupełnić na liście, która jest zapisywana.',
  },
  'fastener-count': {
    says: 'Model mówi tu o śrubach: {said}, a pokazuje {found}.',
    remedy: 'Porównać z rysunkiem; miejsc niepokazanych nie ma na liście.',
  },
  'joint-not-flat': { says: 'Śruby „{tag}” odstają do {off} mm od jednej płaszczyzny.', remedy: 'Sprawdzić, czy to jedno połączenie.' },
  'bolts-on-one-spot': {
    says: 'W „{tag}” {bolts, plural, one {śruba stoi} few {# śruby stoją} many {# śrub stoi} other {# śruby stoi}} tam, gdzie jest już inna.',
    remedy: 'Model może mieć je podwójnie: sprawdzić, zanim użyje się listy.',
  },
  'joint-by-distance': {
    says: 'Nic w modelu nie trzyma razem {bolts, plural, one {śruby} few {# śrub} many {# śrub} other {# śruby}} „{tag}”; pogrupowano według odległości.',
    remedy: 'Porównać połączenie z rysunkiem i nadać mu tabliczkę.',
  },
  'grip-open': { says: 'Ściskana grubość „{tag}” jest nieustalona: {why}.', remedy: 'Uzupełnić na liście, która jest zapisywana.' },
} satisfies NoticeTexts<'model'>;
