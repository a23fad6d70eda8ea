import type { NoticeTexts } from '../notice-texts.ts';

export const inspectionTexts = {
  'moment-unreadable': { says: 'Falta una hora, o no lo es.', remedy: 'Anotar fecha, hora y zona horaria.' },
  'inspection-too-early': {
    says: '{hours} h desde el último tornillo; la inspección se hace desde las {from} h.',
    remedy: 'Esperar: las uniones recientes aún se asientan, y pasarían con demasiada facilidad.',
  },
  'inspection-too-late': {
    says: '{hours} h desde el último tornillo; la inspección debía hacerse dentro de {until} h.',
    remedy: 'Inspeccionar igualmente, decirlo en el registro y que el ingeniero lo juzgue.',
  },
  'recheck-open': {
    says: 'La unión {joint} no se ha repasado desde su última pasada.',
    remedy: 'Dar otra vuelta después de {hours} h, antes de dar presión.',
  },
  'recheck-too-early': {
    says: 'La unión {joint} se repasó menos de {hours} h después de su última pasada: la junta no se había asentado.',
    remedy: 'Dar otra vuelta ahora, antes de dar presión.',
  },
  'inspected-not-drawn': {
    says: 'El tornillo {bolt} de la unión {joint} no salió en el sorteo.',
    remedy: 'Inspeccionar los tornillos sorteados; también se pueden mirar otros, en un registro propio.',
  },
  'inspected-twice': {
    says: 'El tornillo {bolt} de la unión {joint} está dos veces en el registro.',
    remedy: 'Un tornillo cuenta una vez. Corregir la anotación equivocada.',
  },
  'torque-proves-nothing': {
    says: 'El método gira estos tornillos más allá del límite elástico, o su par no demuestra nada.',
    remedy: 'Mirar marcas, galgas o espigas estriadas como dice el método; ninguna comprobación de par.',
  },
  'inspected-with-own-tool': {
    says: 'La herramienta {tool} apretó estos tornillos; no puede inspeccionarlos.',
    remedy: 'Usar la llave certificada propia del inspector.',
  },
} satisfies NoticeTexts<'inspection'>;
