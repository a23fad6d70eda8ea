import type { ForceTexts } from './texts.ts';

/** What a screen tells of forces, in Spanish. */
export const FORCES_ES: ForceTexts = {
  'interaction.title': 'Cómo actúan los tornillos unos sobre otros',
  'interaction.lead': 'Apretar un tornillo alivia o carga a sus vecinos. Fuerzas después de cada ronda, según {model}:',
  'interaction.model.ring section': 'un modelo de la sección del anillo',
  'interaction.model.plate on a bed': 'un modelo de las chapas sobre lo que hay entre ellas',
  'interaction.model.given matrix': 'la matriz dada para esta unión',
  'interaction.limits':
    'Límites de estas cifras: el modelo es lineal, adherido y sin holguras, y un tornillo es un muelle: de 5 a 7 % frente a un tornillo macizo en uniones blandas. Se suman las caras de brida desalineadas, una junta que fluye y el rozamiento que se dispersa.',
  'interaction.round': 'Ronda',
  'interaction.way': 'Orden',
  'interaction.setting': 'Ajuste',
  'interaction.forces': 'Fuerzas después',
  'interaction.range': '{least} a {greatest}',
  'interaction.peak': 'Máxima por el camino',
  'interaction.worst': 'Mayor desviación',
  'interaction.moving': 'Tuercas que se mueven',
  'interaction.minutes': 'Minutos',
  'interaction.custom':
    'Por costumbre en la misma unión (rondas crecientes en secuencia, luego en círculo con el ajuste final): {rounds, plural, one {# ronda} other {# rondas}}, {minutes} min, y entonces el peor tornillo se desvía un {worst}.',
  'interaction.planned':
    'Planificado: {rounds, plural, one {# ronda} other {# rondas}}, {changes, plural, =0 {ningún cambio de ajuste dentro de una ronda} one {# cambio de ajuste dentro de una ronda} other {# cambios de ajuste dentro de una ronda}}, {minutes} min, trabajo {energy} J; el peor tornillo se desvía entonces un {worst} de su objetivo de {target}. Deseado: {wanted}.',
  'interaction.several':
    'Hay tornillos que quedan un tiempo por encima de su objetivo, hasta {peak}: el ingeniero aprueba este programa y una segunda persona confirma cada cambio de ajuste.',
  'interaction.strip': 'tras la ronda {round}: mayor desviación {worst}',
  'interaction.strips-title': 'Fuerzas de los tornillos de {tag} después de cada una de {rounds} rondas, en porcentaje del objetivo',
  'interaction.ring-title': 'Fuerzas alrededor del anillo {tag}: tras la última ronda y tras una anterior',
  'interaction.ring-key':
    'Línea gruesa: tras la última ronda. Línea fina: tras una ronda anterior. Círculo: objetivo; a trazos: lo deseado.',
  'scatter.one': 'Un tornillo dentro',
  'scatter.all': 'Los {bolts} tornillos dentro',
  'scatter.window': 'entre lo mínimo que debe tener y el daño',
  'scatter.below': 'por debajo de lo que dañaría',
  'scatter.chance': '{chance} de las veces',
  'scatter.nearly': 'más del 99,9 % de las veces',
  'scatter.certificate': 'el certificado de la tabla',
  'scatter.repeatability': 'repetibilidad de la herramienta',
  'scatter.lot mean': 'rozamiento medio del lote',
  'scatter.bolt to bolt': 'rozamiento entre tornillos',
  'scatter.share': '{share}',
  'scatter.bell-title': 'Distribución de la precarga en torno a {mean} con su ventana',
  'scatter.bars-title': 'Qué decide la dispersión de la precarga',
  'rotation.title': 'Giro desde el apriete inicial',
  'rotation.text': 'unos {expected}; mirar de nuevo por debajo de {low} o por encima de {high}',
  'step.next': 'El siguiente mejor: {setting} ({torque})',
  'step.angle-window': 'si faltan hasta {minus} se sigue girando; más de {plus} de exceso: preguntar',
  'step.interpolated': 'interpolado, no medido',
  'sequence.painted': 'Números pintados: si se pintan los turnos en el acero, este número va en cada tornillo',
  'sequence.painted-lead': 'Un número pintado no es el número del tornillo.',
};
