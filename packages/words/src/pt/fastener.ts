import type { NoticeTexts } from '../notice-texts.ts';

export const fastenerTexts = {
  'thread-unknown': { says: 'Não se conhece a rosca {designation}.', remedy: 'Escrevê-la como M24, M24x2, 3/4-10 UNC ou 1 1/8-8UN.' },
  'no-coarse-pitch': {
    says: '{designation} não tem passo normal; fabrica-se com passo {pitches} mm.',
    remedy: 'Escrever o passo com ela: {example}.',
  },
  'grade-unknown': {
    says: 'Não se conhece a classe de resistência ou o grau {grade}.',
    remedy: 'Escrevê-lo como na cabeça do parafuso ou no certificado: 8.8, 10.9, A2-70, A193 B7, F3125 A325.',
  },
  'grade-not-in-size': {
    says: 'O grau {grade} não consta para {size}; a medida maior é {largest}.',
    remedy: 'Comparar medida e grau com o certificado; para um parafuso especial, dar com esta ligação o pré-esforço do engenheiro.',
  },
  'no-proof-load': {
    says: 'O grau {grade} não tem carga de prova, por isso não se pode deduzir dele nenhum pré-esforço.',
    remedy: 'Usar um grau feito para pré-esforçar, ou o engenheiro dá o pré-esforço desta ligação.',
  },
  'nut-unknown': {
    says: '{standard} não traz nenhuma porca da classe {nutClass} para {size}.',
    remedy: 'Comparar classe da porca e medida com o certificado.',
  },
  'hexagon-unknown': {
    says: 'Não se conhecem cabeça e porca da família {product} para {size}.',
    remedy: 'Verificar família e medida; ou medir a distância entre faces e dá-la com esta ligação.',
  },
  'washer-unknown': {
    says: '{standard} não traz nenhuma anilha para {size}.',
    remedy: 'Verificar anilha e medida; ou dar a espessura com esta ligação.',
  },
  'hole-unknown': {
    says: '{standard} não traz nenhum furo para {size}.',
    remedy: 'Verificar a medida; ou dar o diâmetro do furo com esta ligação.',
  },
  'clamped-material-unknown': {
    says: 'Não se conhece limite de pressão superficial para {material}.',
    remedy: 'Nomear o material como na sua norma (S355, C45, EN-GJL-250), ou dar o limite com esta ligação.',
  },
  'length-not-listed': {
    says: '{product} {size} não se fabrica com {boltLength} de comprimento.',
    remedy: 'Verificar o comprimento impresso na caixa; os comprimentos vão em saltos de 5 mm.',
  },
} satisfies NoticeTexts<'fastener'>;
