import type { NoticeTexts } from '../notice-texts.ts';

export const ruleTexts = {
  'rule-unknown': {
    says: 'No se conoce el conjunto de reglas {rule}.',
    remedy: 'Elegir uno de los que «clampwright init» pone en job.yaml.',
  },
  'edition-unknown': { says: 'El conjunto de reglas no tiene la edición {edition}.', remedy: 'Ediciones conocidas: {known}.' },
  'structural-size-too-small': {
    says: '{size} está por debajo de M12, la medida menor que EN 1090-2 deja precargar.',
    remedy: 'Pedir al ingeniero otra medida, o una precarga especificada para esta unión.',
  },
  'grade-not-preloadable': {
    says: 'El grado {grade} no se puede precargar según {rule}.',
    remedy: 'Usar el grado para el que está hecho el conjunto de reglas, o que el ingeniero especifique precarga y método.',
  },
  'k-class-needed': {
    says: 'El método ({method}) necesita la clase k del lote ({needed}); no se da ninguna.',
    remedy: 'Anotar la clase k de la etiqueta del lote.',
  },
  'k-class-insufficient': {
    says: 'El método ({method}) necesita la clase k {needed}; el lote tiene {kClass}.',
    remedy: 'Usar un lote de la clase correcta, o un método que admita esta.',
  },
  'lot-untested': {
    says: 'El método ({method}) necesita k_m de este mismo lote; no hay anotado ensayo ni certificado suyo.',
    remedy: 'Anotar k_m y V_k del certificado del lote, o hacer un ensayo de aptitud.',
  },
  'clamp-thickness-needed': {
    says: 'El ángulo depende del espesor apretado, que no se da.',
    remedy: 'Anotar Σt: todas las chapas, rellenos y arandelas entre cabeza y tuerca.',
  },
  'bolt-length-needed': {
    says: 'El giro depende de la longitud del tornillo, que no se da.',
    remedy: 'Anotar la longitud nominal del tornillo.',
  },
  'angle-not-tabulated': {
    says: 'Con {thickness} apretados la tabla no da ángulo; acaba en {limit}.',
    remedy: 'Hacer determinar el ángulo con un ensayo de procedimiento en esta unión, o cambiar de método.',
  },
  'assembly-needed': {
    says: 'El método ({method}) necesita tornillo, tuerca y arandela de un mismo conjunto para pretensar (EN 14399); la unión no indica ningún sistema, o tornillos corrientes.',
    remedy:
      'Escribir {needed} en la columna «sistema» (system) de la lista de uniones, como dice la etiqueta del suministro, o elegir un método para tornillos corrientes.',
  },
  'system-needed': { says: 'El método ({method}) está hecho para conjuntos {needed}.', remedy: 'Usar {needed}, u otro método.' },
  'size-not-in-table': {
    says: '{size} no tiene valor en {table}.',
    remedy: 'Leer la edición vigente, o que el ingeniero dé la cifra de esta unión.',
  },
  'bolt-stress-needed': {
    says: 'No se da tensión de montaje de los tornillos para esta brida.',
    remedy: 'Preguntar al ingeniero: sale de junta, brida y tornillos en conjunto.',
  },
  'bolt-stress-above-yield': {
    says: 'La tensión de tornillo de {stress} alcanza el límite elástico, {yield}.',
    remedy: 'Comprobar tensión, sección y grado con el ingeniero.',
  },
  'bolt-stress-high': {
    says: 'La tensión de tornillo es {share} del límite elástico; más de {usual} no es usual en una brida.',
    remedy: 'Que el ingeniero confirme la tensión en la junta y el giro de la brida.',
  },
  'friction-unknown': {
    says: 'No se sabe nada del rozamiento de este lote y lubricante.',
    remedy: 'Anotar un factor k o coeficientes de rozamiento con su fuente; uno desconocido no se sustituye por uno usual.',
  },
  'coefficients-needed': {
    says: 'VDI 2230 necesita los coeficientes de rozamiento de rosca y de apoyo, no un factor k.',
    remedy: 'Anotar ambos coeficientes, o una clase de rozamiento.',
  },
  'figure-needed': {
    says: 'La unión se ha de apretar según especificación, pero no se da precarga ni par.',
    remedy: 'Anotar la precarga o el par del ingeniero para esta unión.',
  },
  'preload-basis-needed': {
    says: 'Un par solo no dice qué precarga da, ni una precarga qué par.',
    remedy: 'Anotar el factor k de lote y lubricante, o precarga y par a la vez.',
  },
  'tested-torque-needed': {
    says: 'Una llave calibrada se ajusta con un ensayo de este lote; un par de tabla o de fórmula no vale.',
    remedy: 'Verificar al menos tres conjuntos del lote en un calibrador de tracción antes de instalar, y anotar el resultado.',
  },
} satisfies NoticeTexts<'rule'>;
