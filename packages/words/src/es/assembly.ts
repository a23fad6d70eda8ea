import type { NoticeTexts } from '../notice-texts.ts';

export const assemblyTexts = {
  'protrusion-short': {
    says: 'Tornillo {bolt}: asoman {found} de rosca fuera de la tuerca; el mínimo es {wanted}.',
    remedy: 'Tomar un tornillo más largo.',
  },
  'clear-threads-few': {
    says: 'Tornillo {bolt}: {found, plural, =0 {ningún filete completo} one {# filete completo} other {# filetes completos}} entre tuerca y caña; al menos {wanted}.',
    remedy: 'Tomar la longitud de tornillo correcta, o una arandela más bajo la cabeza.',
  },
  'plates-step': {
    says: 'Las chapas de una capa difieren {found}; se admite {allowed}.',
    remedy: 'Poner una chapa de relleno del espesor correcto.',
  },
  'packs-wrong': {
    says: '{count, plural, one {La chapa de relleno no es como se admite} other {# chapas de relleno no son como se admite}}: al menos 2 mm cada una, tres como máximo.',
    remedy: 'Usar menos y más gruesas.',
  },
  'slip-surface-other': {
    says: 'La superficie de rozamiento está especificada de clase {specified}; se encontró clase {found}.',
    remedy: 'Parar. Preparar la superficie como se especificó, o preguntar al ingeniero qué resiste la encontrada.',
  },
  'gasket-other': {
    says: 'La junta es {found}; la especificación dice {wanted}.',
    remedy: 'Conseguir la junta correcta. Un par vale solo para su propia junta.',
  },
  'gasket-used': { says: 'La junta no es nueva.', remedy: 'Usar una nueva. Una junta nunca se usa dos veces.' },
  'gasket-faces': {
    says: 'No consta que las caras de asiento estén limpias y sanas.',
    remedy: 'Limpiar y mirar ambas; las marcas radiales que cruzan el asiento van al ingeniero.',
  },
} satisfies NoticeTexts<'assembly'>;
