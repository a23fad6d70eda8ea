import type { NoticeTexts } from '../notice-texts.ts';

export const jointTexts = {
  'no-bolts': { says: 'La unión no tiene tornillos.', remedy: 'Anotar cuántos tornillos tiene, o la brida a la que pertenece.' },
  'positions-wrong': {
    says: 'Los subgrupos no suman los {boltCount} tornillos de la unión (faltan: {missing}; repetidos: {twice}).',
    remedy: 'Dar cada tornillo a un subgrupo y solo a uno.',
  },
  'sequence-wrong': {
    says: 'La secuencia del ingeniero no nombra una vez cada uno de los {boltCount} tornillos.',
    remedy: 'Corregir la secuencia; no se completa adivinando.',
  },
  'tools-at-once-wrong': {
    says: '{tools} herramientas a la vez no reparten por igual {boltCount} tornillos; el plan usa una.',
    remedy: 'Usar un número de herramientas que divida los tornillos.',
  },
  'tool-unknown': { says: 'La herramienta {serial} no está entre las del trabajo.', remedy: 'Añadirla con su tabla, o nombrar otra.' },
  'no-tool': {
    says: 'El trabajo no tiene ninguna herramienta con tabla de ajustes.',
    remedy: 'Añadir una herramienta con la tabla de su certificado.',
  },
  'tool-chart-faulty': {
    says: 'La tabla de la herramienta {serial} tiene fallos, así que no se lee nada de ella.',
    remedy: 'Arreglar la tabla; sus fallos figuran con la herramienta.',
  },
  'several-tools': {
    says: 'Ninguna herramienta sola cubre todas las etapas; el plan usa {tools}.',
    remedy: 'Llevar todas, y leer en la ficha la herramienta de cada etapa.',
  },
  'lot-unknown': { says: 'El lote {lot} no está entre los del trabajo.', remedy: 'Añadir el lote con su certificado o ensayo.' },
  'lot-failed': {
    says: 'El lote {lot} no pasó su ensayo.',
    remedy: 'No usarlo. Tomar otro lote, o ensayar otra vez cuando se conozca la causa.',
  },
  'turned-not-tested': {
    says: 'El lote {lot} se ensayó girando {tested, select, head {la cabeza} other {la tuerca}}; aquí gira {turned, select, head {la cabeza} other {la tuerca}}. Un par vale solo como se ensayó.',
    remedy:
      'Girar {tested, select, head {la cabeza} other {la tuerca}}, o ensayar el lote girando {turned, select, head {la cabeza} other {la tuerca}}.',
  },
  'datum-missing': {
    says: 'No se dice dónde está el tornillo 1, en qué sentido van los números ni desde qué lado se mira.',
    remedy: 'Anotar el origen, o que la cuadrilla marque el tornillo 1 en el acero y lo confirme.',
  },
  'permit-missing': {
    says: 'Una unión a presión necesita su permiso de aislamiento o de apertura de línea antes de tocar una tuerca; no hay ninguno anotado.',
    remedy: 'Anotar el número del permiso.',
  },
  'zone-missing': {
    says: 'No se dice si la unión está en un área peligrosa.',
    remedy: 'Anotar la zona de cada unión, o «zone: none» para todo el trabajo.',
  },
  'hot-work-missing': {
    says: 'La herramienta {tool} es una fuente de ignición; en la zona {zone} necesita permiso de trabajo en caliente y prueba de gases.',
    remedy: 'Anotar ambos números, o planificar una herramienta sin electricidad.',
  },
  'wet-retest': {
    says: 'Se indica lluvia. Los tornillos mojados u oxidados no tienen el rozamiento con que se ensayaron.',
    remedy: 'Mantener secos los lotes; ensayar otra vez un lote mojado antes de apretarlo.',
  },
  'arm-length-unknown': {
    says: 'El brazo de la herramienta {serial} no tiene longitud, así que no se conoce su fuerza de reacción.',
    remedy: 'Medirlo a escuadra desde el cuadradillo hasta el contacto y anotarlo.',
  },
  'arm-overloaded': {
    says: 'La etapa necesita {torque}; el brazo de reacción admite {rating}.',
    remedy: 'Tomar un brazo que admita ese par.',
  },
  'reaction-point-overloaded': {
    says: 'El brazo empuja con {force}; su punto puede recibir {limit}.',
    remedy: 'Elegir un punto de reacción más fuerte o un brazo admitido más largo. Nunca alargar un brazo en obra.',
  },
  'reaction-point-unknown': {
    says: 'El brazo empujará con {force}; no se nombra ningún punto de reacción.',
    remedy: 'Nombrar uno que lo resista: una tuerca vecina apretada, el canto de una brida, un tope hecho a propósito.',
  },
  'socket-does-not-fit': {
    says: 'El vaso de {socket} toca el hexágono vecino con una separación entre tornillos de {pitch}: faltan {lacking}.',
    remedy: 'Usar un vaso de pared delgada que admita el par.',
  },
  'socket-meets-wall': {
    says: 'El vaso de {socket} toca la pared, a {wall} del tornillo.',
    remedy: 'Usar un vaso menor, o girar la otra pieza.',
  },
  'socket-unknown': {
    says: 'No hay anotado con la herramienta ningún vaso de {acrossFlats} entre caras.',
    remedy: 'Anotar su diámetro exterior, para poder comprobar el espacio libre.',
  },
  'yield-likely': {
    says: '{share} de los tornillos pasarían del límite elástico al apretarlos.',
    remedy: 'Comprobar par, rozamiento y grado; tomar un ajuste o un lubricante que deje margen.',
  },
  'below-target-likely': {
    says: '{share} de los tornillos pueden quedar por debajo de la precarga objetivo.',
    remedy: 'Ayuda menos dispersión: un lote ensayado, una herramienta mejor; o el consentimiento del ingeniero.',
  },
  'torque-unit-doubt': {
    says: '{torque} significaría {basis, select, yield {un tornillo girado más allá del límite elástico con factor k {k}} other {un factor k de {k}}}; leído en la otra unidad de par sería una cifra corriente.',
    remedy: 'Comprobar si la cifra está en N·m o en lbf·ft.',
  },
  'torque-implausible': {
    says: '{torque} significaría {basis, select, yield {un tornillo girado más allá del límite elástico con factor k {k}} other {un factor k de {k}, que ningún lubricante tiene}}.',
    remedy: 'Comprobar par, precarga y medida con la especificación.',
  },
  'engineer-override': {
    says: 'Se usa lo que da el ingeniero en lugar de lo nuestro ({what}).',
    remedy: 'Nada que hacer; en plan y ficha se muestra como suyo.',
  },
  'figure-not-used': {
    says: 'La lista da un valor ({what}); este conjunto de reglas no lo emplea, y el plan no lo sigue.',
    remedy:
      'Quitarlo, o nombrar el conjunto de reglas que lo toma (as-specified para un par o una precarga, flange-bolt-stress para una tensión de tornillo).',
  },
  'friction-from-table': {
    says: 'El rozamiento sale de una tabla ({source}), no de un ensayo de este lote.',
    remedy: 'Preferir un ensayo: las tablas difieren en la mitad para las mismas palabras.',
  },
  'bolt-too-short': {
    says: 'La longitud de tornillo {length} no alcanza: {thickness} apretados y una tuerca de {nut} necesitan al menos {needed}.',
    remedy: 'Usar un tornillo más largo, o corregir la longitud o el espesor apretado (Σt: chapas, rellenos y arandelas).',
  },
  'bolt-below-clamp': {
    says: 'La longitud de tornillo {length} es menor que los {thickness} apretados.',
    remedy: 'Usar un tornillo más largo, o corregir la longitud o el espesor apretado (Σt: chapas, rellenos y arandelas).',
  },
  'clamp-below-thread': {
    says: 'La longitud de tornillo {length} deja demasiado poco para la tuerca y un paso más allá de {thickness} apretados.',
    remedy: 'Comprobar longitud y espesor apretado.',
  },
  'qualification-expired': {
    says: 'La cualificación de {person} venció el {until}.',
    remedy: 'Renovarla, o que haga el trabajo alguien cualificado.',
  },
} satisfies NoticeTexts<'joint'>;
