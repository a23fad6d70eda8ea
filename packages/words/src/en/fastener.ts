import type { NoticeTexts } from '../notice-texts.ts';

export const fastenerTexts = {
  'thread-unknown': {
    says: 'No thread {designation} is known.',
    remedy: 'Write it as M24, M24x2, 3/4-10 UNC or 1 1/8-8UN.',
  },
  'no-coarse-pitch': {
    says: '{designation} has no coarse pitch; it is made with pitch {pitches} mm.',
    remedy: 'Write the pitch with it: {example}.',
  },
  'grade-unknown': {
    says: 'No property class or grade {grade} is known.',
    remedy: 'Write it as on the head of the bolt or the certificate: 8.8, 10.9, A2-70, A193 B7, F3125 A325.',
  },
  'grade-not-in-size': {
    says: 'Grade {grade} is not listed for {size}; the largest size is {largest}.',
    remedy: 'Check size and grade against the certificate; for a special fastener give the engineer’s preload with this joint.',
  },
  'no-proof-load': {
    says: 'Grade {grade} has no proof load, so no preload may be derived from it.',
    remedy: 'Use a grade made for preloading, or let the engineer give the preload of this joint.',
  },
  'nut-unknown': {
    says: '{standard} lists no nut of class {nutClass} for {size}.',
    remedy: 'Check nut class and size against the certificate.',
  },
  'hexagon-unknown': {
    says: 'No head and nut of the family {product} are known for {size}.',
    remedy: 'Check family and size; or measure the width across flats and give it with this joint.',
  },
  'washer-unknown': {
    says: '{standard} lists no washer for {size}.',
    remedy: 'Check washer and size; or give the thickness with this joint.',
  },
  'hole-unknown': {
    says: '{standard} lists no hole for {size}.',
    remedy: 'Check the size; or give the hole diameter with this joint.',
  },
  'clamped-material-unknown': {
    says: 'No limit of surface pressure is known for {material}.',
    remedy: 'Name the material as its standard does (S355, C45, EN-GJL-250), or give the limit with this joint.',
  },
  'length-not-listed': {
    says: '{product} {size} is not made {boltLength} long.',
    remedy: 'Check the length stamped on the box; lengths go in steps of 5 mm.',
  },
} satisfies NoticeTexts<'fastener'>;
