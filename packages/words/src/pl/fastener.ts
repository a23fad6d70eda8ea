import type { NoticeTexts } from '../notice-texts.ts';

export const fastenerTexts = {
  'thread-unknown': { says: 'Gwint {designation} jest nieznany.', remedy: 'Napisać jak M24, M24x2, 3/4-10 UNC albo 1 1/8-8UN.' },
  'no-coarse-pitch': {
    says: '{designation} nie ma skoku zwykłego; wykonuje się go ze skokiem {pitches} mm.',
    remedy: 'Dopisać skok: {example}.',
  },
  'grade-unknown': {
    says: 'Klasa własności lub gatunek {grade} jest nieznany.',
    remedy: 'Napisać jak na łbie śruby lub w świadectwie: 8.8, 10.9, A2-70, A193 B7, F3125 A325.',
  },
  'grade-not-in-size': {
    says: 'Gatunku {grade} nie podano dla {size}; największy wymiar to {largest}.',
    remedy: 'Porównać wymiar i gatunek ze świadectwem; dla śruby specjalnej podać przy tym połączeniu siłę sprężenia od inżyniera.',
  },
  'no-proof-load': {
    says: 'Gatunek {grade} nie ma obciążenia próbnego, więc nie wolno z niego wyprowadzać siły sprężenia.',
    remedy: 'Użyć gatunku przeznaczonego do sprężania albo inżynier poda siłę sprężenia tego połączenia.',
  },
  'nut-unknown': {
    says: '{standard} nie podaje nakrętki klasy {nutClass} dla {size}.',
    remedy: 'Porównać klasę nakrętki i wymiar ze świadectwem.',
  },
  'hexagon-unknown': {
    says: 'Łeb i nakrętka rodziny {product} nie są znane dla {size}.',
    remedy: 'Sprawdzić rodzinę i wymiar; albo zmierzyć rozwartość klucza i podać ją przy tym połączeniu.',
  },
  'washer-unknown': {
    says: '{standard} nie podaje podkładki dla {size}.',
    remedy: 'Sprawdzić podkładkę i wymiar; albo podać grubość przy tym połączeniu.',
  },
  'hole-unknown': {
    says: '{standard} nie podaje otworu dla {size}.',
    remedy: 'Sprawdzić wymiar; albo podać średnicę otworu przy tym połączeniu.',
  },
  'clamped-material-unknown': {
    says: 'Granica nacisku powierzchniowego dla {material} jest nieznana.',
    remedy: 'Nazwać materiał jak w jego normie (S355, C45, EN-GJL-250) albo podać granicę przy tym połączeniu.',
  },
  'length-not-listed': {
    says: '{product} {size} nie wykonuje się o długości {boltLength}.',
    remedy: 'Sprawdzić długość na pudełku; długości idą co 5 mm.',
  },
} satisfies NoticeTexts<'fastener'>;
