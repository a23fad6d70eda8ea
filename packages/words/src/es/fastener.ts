import type { NoticeTexts } from '../notice-texts.ts';

export const fastenerTexts = {
  'thread-unknown': { says: 'No se conoce la rosca {designation}.', remedy: 'Escribirla como M24, M24x2, 3/4-10 UNC o 1 1/8-8UN.' },
  'no-coarse-pitch': {
    says: '{designation} no tiene paso grueso; se fabrica con paso {pitches} mm.',
    remedy: 'Escribir el paso con ella: {example}.',
  },
  'grade-unknown': {
    says: 'No se conoce la clase de resistencia o el grado {grade}.',
    remedy: 'Escribirlo como en la cabeza del tornillo o en el certificado: 8.8, 10.9, A2-70, A193 B7, F3125 A325.',
  },
  'grade-not-in-size': {
    says: 'El grado {grade} no figura para {size}; la medida mayor es {largest}.',
    remedy: 'Comparar medida y grado con el certificado; para un tornillo especial, dar con esta unión la precarga del ingeniero.',
  },
  'no-proof-load': {
    says: 'El grado {grade} no tiene carga de prueba, así que no se puede deducir de él ninguna precarga.',
    remedy: 'Usar un grado hecho para precargar, o que el ingeniero dé la precarga de esta unión.',
  },
  'nut-unknown': {
    says: '{standard} no recoge ninguna tuerca de clase {nutClass} para {size}.',
    remedy: 'Comparar clase de tuerca y medida con el certificado.',
  },
  'hexagon-unknown': {
    says: 'No se conocen cabeza y tuerca de la familia {product} para {size}.',
    remedy: 'Comprobar familia y medida; o medir la distancia entre caras y darla con esta unión.',
  },
  'washer-unknown': {
    says: '{standard} no recoge ninguna arandela para {size}.',
    remedy: 'Comprobar arandela y medida; o dar el espesor con esta unión.',
  },
  'hole-unknown': {
    says: '{standard} no recoge ningún agujero para {size}.',
    remedy: 'Comprobar la medida; o dar el diámetro del agujero con esta unión.',
  },
  'clamped-material-unknown': {
    says: 'No se conoce límite de presión superficial para {material}.',
    remedy: 'Nombrar el material como su norma (S355, C45, EN-GJL-250), o dar el límite con esta unión.',
  },
  'length-not-listed': {
    says: '{product} {size} no se fabrica de {boltLength} de largo.',
    remedy: 'Comprobar la longitud impresa en la caja; las longitudes van en saltos de 5 mm.',
  },
} satisfies NoticeTexts<'fastener'>;
