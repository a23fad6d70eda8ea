import type { NoticeTexts } from '../notice-texts.ts';

export const interactionTexts = {
  'compliance-size': {
    says: 'No se puede usar una matriz de flexibilidad de {bolts} tornillos; se puede entre 1 y {most}.',
    remedy: 'Dividir la unión.',
  },
  'compliance-not-square': {
    says: 'La matriz de flexibilidad no tiene {bolts} filas de {bolts} cifras.',
    remedy: 'Anotar una fila y una columna por cada tornillo.',
  },
  'compliance-not-symmetric': {
    says: 'La matriz de flexibilidad no es simétrica en los tornillos {first} y {second}.',
    remedy:
      'Lo que el tornillo {first} hace al {second} debe ser igual a lo que el {second} hace al {first}; medir o anotar otra vez esa pareja de valores.',
  },
  'compliance-not-definite': {
    says: 'La matriz de flexibilidad no es de una unión elástica: no es definida positiva.',
    remedy: 'Buscar un signo equivocado, una unidad equivocada (mm/N) o una flexibilidad de tornillo que falte en la diagonal.',
  },
  'members-impossible': {
    says: 'No se calculó cómo actúan los tornillos entre sí: las dimensiones describen algo imposible ({what}).',
    remedy: 'Corregirlas en members.yaml.',
  },
  'members-unknown': {
    says: 'No se calculó cómo actúan los tornillos entre sí; no se conoce: {what}.',
    remedy: 'Anotarlo en la lista de uniones o en members.yaml.',
  },
  'gasket-modulus-needed': {
    says: 'No se calculó cómo actúan los tornillos entre sí: no hay nada típico de esta junta.',
    remedy: 'Anotar su espesor y módulo en members.yaml (datos del fabricante, EN 13555).',
  },
  'gasket-modulus-assumed': {
    says: 'La rigidez de la junta es solo la típica de su clase; de ella depende cómo actúan los tornillos entre sí.',
    remedy: 'Anotar en members.yaml el módulo del fabricante (EN 13555) de esta junta.',
  },
  'gasket-load-above': {
    says: 'Los tornillos juntos aprietan la junta con {force}; su tensión máxima de montaje admite {greatest}.',
    remedy: 'Pedir al ingeniero una tensión de tornillo menor u otra junta; ningún ajuste con esta tensión la protege.',
  },
  'gasket-load-below': {
    says: 'Los tornillos juntos aprietan la junta con {force}; su tensión mínima de montaje pide {least}.',
    remedy: 'Pedir al ingeniero una tensión de tornillo mayor u otra junta; ningún ajuste con esta tensión la asienta.',
  },
  'uneven-by-custom': {
    says: 'Apretar un tornillo alivia a sus vecinos: después de {rounds} pasadas las fuerzas aún difieren {spread}.',
    remedy:
      'Dar vueltas hasta que no se mueva ninguna tuerca: contar con {more, plural, one {# pasada más} other {# pasadas más}} hasta que cada tornillo esté dentro de {wanted}.',
  },
  'uneven-still': {
    says: 'Después de {rounds} pasadas un tornillo aún está a {worst} de su objetivo; se quería {wanted}.',
    remedy:
      'Preguntar al ingeniero: otra junta o lubricante, varias herramientas a la vez, o una secuencia con fuerzas por encima del objetivo.',
  },
  'peak-above-ceiling': {
    says: 'Mientras se aprietan otros, un tornillo sube a {peak}; por encima de {ceiling} puede dañarse.',
    remedy: 'Preguntar al ingeniero: más pasadas con ajustes crecientes, varias herramientas a la vez, o menos precarga.',
  },
  'above-target-approval': {
    says: 'Esta secuencia lleva tornillos a {peak} por un tiempo; el objetivo es {target}.',
    remedy: 'El ingeniero aprueba la secuencia para esta unión, y una segunda persona confirma cada cambio de ajuste.',
  },
  'above-target-refused': {
    says: 'Según {rule} ningún tornillo puede estar por encima de su objetivo; no se usa la fuerza máxima de tornillo dada para esta unión.',
    remedy: 'Apretar con un solo ajuste por pasada.',
  },
  'several-settings-none': {
    says: 'No se halló ninguna secuencia de varios ajustes por debajo de {cap}.',
    remedy: 'Apretar con un solo ajuste por pasada, o pedir al ingeniero otra fuerza máxima de tornillo.',
  },
} satisfies NoticeTexts<'interaction'>;
