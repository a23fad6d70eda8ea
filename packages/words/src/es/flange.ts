import type { NoticeTexts } from '../notice-texts.ts';

export const flangeTexts = {
  'flange-unknown': {
    says: '{standard} no recoge ninguna brida {size} {rating}.',
    remedy: 'Comprobar medida y presión nominal en el canto de la brida; o anotar a mano tornillos, círculo de tornillos y agujero.',
  },
  'gasket-unknown': {
    says: 'No se conocen cifras para la junta «{gasket}».',
    remedy: 'Anotar las cifras del fabricante de la junta, con su fuente.',
  },
  'assembly-stress-limited': {
    says: 'La junta pide una tensión de tornillo de {wanted}; {by, select, greatest {la tensión máxima del tornillo la limita a} least {la tensión mínima del tornillo la sube a} other {la brida la limita a}} {selected}.',
    remedy: 'Leer las comprobaciones de junta y brida a esta tensión antes de seguir.',
  },
  'gasket-not-seated': {
    says: 'Con una tensión de tornillo de {stress} la junta no asienta; necesita {limit}.',
    remedy: 'Que el proyectista elija otra junta, tornillos más resistentes o una cara de contacto más estrecha.',
  },
  'gasket-unloads-in-service': {
    says: 'Con una tensión de tornillo de {stress} queda demasiado poco sobre la junta en servicio; necesita {limit}.',
    remedy: 'Que el proyectista elija otra junta o tornillos más resistentes, o revise presión y relajación.',
  },
  'gasket-crushed': {
    says: 'Una tensión de tornillo de {stress} aplasta la junta; aguanta {limit}.',
    remedy: 'Bajar la tensión de tornillo, o que el proyectista elija una junta que aguante más.',
  },
  'flange-rotates-too-far': {
    says: 'Con una tensión de tornillo de {stress} las bridas giran más de lo que aguanta la junta; el límite es {limit}.',
    remedy: 'Bajar la tensión de tornillo, o que el proyectista revise brida y junta.',
  },
} satisfies NoticeTexts<'flange'>;
