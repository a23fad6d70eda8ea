import type { NoticeTexts } from '../notice-texts.ts';

export const assemblyTexts = {
  'protrusion-short': {
    says: 'Schraube {bolt}: {found} Gewinde stehen aus der Mutter; mindestens {wanted} müssen es sein.',
    remedy: 'Eine längere Schraube nehmen.',
  },
  'clear-threads-few': {
    says: 'Schraube {bolt}: {found, plural, =0 {kein voller Gewindegang} one {# voller Gewindegang} other {# volle Gewindegänge}} zwischen Mutter und Schaft; mindestens {wanted}.',
    remedy: 'Die richtige Schraubenlänge nehmen, oder eine Scheibe mehr unter den Kopf.',
  },
  'plates-step': {
    says: 'Bleche einer Lage weichen um {found} ab; erlaubt ist {allowed}.',
    remedy: 'Ein Futterblech der richtigen Dicke einlegen.',
  },
  'packs-wrong': {
    says: '{count, plural, one {Das Futterblech ist} other {# Futterbleche sind}} nicht wie erlaubt: jedes mindestens 2 mm, höchstens drei.',
    remedy: 'Weniger und dickere verwenden.',
  },
  'slip-surface-other': {
    says: 'Die Reibfläche ist als Klasse {specified} vorgegeben; vorgefunden wurde Klasse {found}.',
    remedy: 'Anhalten. Die Fläche wie vorgegeben herstellen, oder den Ingenieur fragen, was die vorgefundene trägt.',
  },
  'gasket-other': {
    says: 'Die Dichtung ist {found}; vorgegeben ist {wanted}.',
    remedy: 'Die richtige Dichtung besorgen. Ein Drehmoment gilt nur für seine eigene Dichtung.',
  },
  'gasket-used': { says: 'Die Dichtung ist nicht neu.', remedy: 'Eine neue verwenden. Eine Dichtung wird nie zweimal verwendet.' },
  'gasket-faces': {
    says: 'Die Dichtflächen sind nicht als sauber und unbeschädigt festgestellt.',
    remedy: 'Beide reinigen und ansehen; Riefen quer über die Dichtfläche gehen an den Ingenieur.',
  },
} satisfies NoticeTexts<'assembly'>;
