import type { NoticeTexts } from '../notice-texts.ts';

const SETTLE = 'Resolver con nombre: sustituir, rehacer o usar como está, con el motivo.';
const RESEND = 'No se guardó nada de ello. Enviarlo otra vez como lo tiene el dispositivo; si se rechaza de nuevo, avisar del fallo.';
const DISTRUST = 'No fiarse del archivo. Pedir otra copia a quien lo hizo, y comparar los puntos de control.';

export const recordTexts = {
  'export-misfit': {
    says: 'La exportación abierta no encaja: {file}: {problem}.',
    remedy: 'Tomar la carpeta como se escribió; no se tomó nada de ella.',
  },
  'bolt-tightened-twice': { says: 'El tornillo {bolt} se apretó dos veces en «{step}».', remedy: SETTLE },
  'bolt-not-in-joint': { says: 'En el plan emitido la unión no tiene el tornillo {bolt}.', remedy: SETTLE },
  'step-too-early': {
    says: 'El tornillo {bolt} se apretó en «{step}» antes de que «{open}» estuviera hecha en todos los tornillos.',
    remedy: SETTLE,
  },
  'bolt-out-of-order': { says: 'El tornillo {bolt} se apretó fuera de secuencia en «{step}».', remedy: SETTLE },
  'step-not-issued': { says: 'El plan emitido no tiene «{step}» para esta unión.', remedy: SETTLE },
  'setting-not-issued': {
    says: 'Tornillo {bolt}, «{step}»: el ajuste {setting} en la herramienta {tool} no está en el plan emitido.',
    remedy: SETTLE,
  },
  'plan-not-issued': { says: 'Se trabajó en una unión para la que no se emitió ningún plan.', remedy: SETTLE },
  'plan-was-withdrawn': { says: 'Se trabajó con el plan {number} después de retirarlo.', remedy: SETTLE },
  'card-was-withdrawn': { says: 'Se trabajó en una unión que el plan {number} ya no incluye.', remedy: SETTLE },
  'plan-slice-differs': { says: 'Se trabajó con una ficha que no es la del plan {number}.', remedy: SETTLE },
  'tool-not-known': { says: 'La herramienta {tool} no está en ningún plan emitido ni en el libro de la obra.', remedy: SETTLE },
  'tool-expired': { says: 'La herramienta {tool} se usó después de vencer su calibración el {due}.', remedy: SETTLE },
  'tool-not-checked': { says: 'La herramienta {tool} no tiene comprobación diaria del {date}.', remedy: SETTLE },
  'tool-check-failed': { says: 'La herramienta {tool} no pasó la comprobación diaria del {date} y se usó.', remedy: SETTLE },
  'person-not-named': { says: 'No se nombra a nadie como quien lo hizo.', remedy: SETTLE },
  'person-not-known': { says: 'La persona {person} no está inscrita en este trabajo.', remedy: SETTLE },
  'person-not-qualified': { says: 'La persona {person} estaba cualificada hasta el {until}.', remedy: SETTLE },
  'person-was-revoked': { says: 'La persona {person} había sido retirada del trabajo.', remedy: SETTLE },
  'device-was-revoked': { says: 'El dispositivo {device} había sido revocado.', remedy: SETTLE },
  'device-forked': {
    says: 'El dispositivo {device} dijo dos cosas distintas en el lugar {sequence} de su cadena: fue copiado o puesto hacia atrás.',
    remedy: 'Buscar los dispositivos, revocar la clave, unirlos de nuevo; resolver con nombre qué anotaciones valen.',
  },
  'device-not-enrolled': {
    says: 'El dispositivo {device} aún no está anotado en el registro de este trabajo.',
    remedy:
      'No se pierde nada y el trabajo sigue: cuenta en cuanto el navegador del planificador anote el dispositivo (Oficina, Dispositivos).',
  },
  'datum-differs': {
    says: 'El origen que se confirmó no es el del plan.',
    remedy: 'Parar en esta unión y buscar otra vez el tornillo 1; resolverlo con nombre.',
  },
  'bolts-left-open': { says: 'La unión se firmó con {count} tornillos sin apretar.', remedy: SETTLE },
  'inspection-failed': { says: 'El tornillo {bolt} no pasó su inspección.', remedy: SETTLE },
  'trouble-reported': { says: 'Tornillo {bolt}: {what}.', remedy: SETTLE },
  'entry-not-readable': {
    says: 'Una anotación de tipo {kind}, versión {version}, no se puede leer aquí. Se conserva como llegó.',
    remedy: 'Leerla con la versión de Clampwright que la escribió, o una posterior.',
  },
  'corrects-unknown-entry': { says: 'Una corrección nombra la anotación {entry}, que no está en este libro.', remedy: SETTLE },
  'counter-behind': { says: 'Una anotación tiene el contador {counter} y nombra anotaciones hasta {known}.', remedy: SETTLE },
  'batch-not-readable': { says: 'El envío no es gzip, se cortó, o es mayor que {limit} bytes.', remedy: RESEND },
  'batch-malformed': { says: 'Un envío son cabezas firmadas, una línea vacía y de 1 a {entries} anotaciones.', remedy: RESEND },
  'not-canonical': { says: 'Esto no es JSON canónico: {why}.', remedy: RESEND },
  'entry-too-large': { says: 'Una anotación de {bytes} bytes; el límite es {limit}.', remedy: 'Poner fotos y textos largos en anexos.' },
  'entry-malformed': { says: 'El campo «{field}» de una anotación falta o no es como se describe.', remedy: RESEND },
  'entry-of-another-book': { says: 'Una anotación del libro {job} se envió a otro libro.', remedy: RESEND },
  'entry-of-another-device': { says: 'Una anotación del dispositivo {device} se envió en nombre de otro.', remedy: RESEND },
  'chain-has-a-gap': {
    says: 'La anotación {sequence} del dispositivo {device} sigue a una que no está aquí.',
    remedy: 'Enviar antes las anotaciones que la preceden.',
  },
  'chain-counter-falls': { says: 'El contador no sube en la anotación {sequence} del dispositivo {device}.', remedy: RESEND },
  'head-malformed': { says: 'El campo «{field}» de una cabeza de cadena firmada falta o no es como se describe.', remedy: RESEND },
  'head-not-signed': { says: 'La firma del dispositivo {device} no encaja con su anotación {sequence}.', remedy: RESEND },
  'key-of-another-device': { says: 'La clave no es del dispositivo {device}.', remedy: 'Unir el dispositivo de nuevo.' },
  'receipt-malformed': { says: 'El campo «{field}» de un recibo falta o no es como se describe.', remedy: RESEND },
  'receipt-of-another-entry': { says: 'El recibo del lugar {index} nombra otra anotación.', remedy: RESEND },
  'note-malformed': {
    says: 'La línea {line} de la nota firmada no es como se describe.',
    remedy: 'Usar el punto de control como se escribió.',
  },
  'note-not-signed': { says: 'Ninguna firma de {name} bajo esta nota encaja con su texto.', remedy: 'No fiarse de ella.' },
  'log-shorter-than-seen': {
    says: 'El diario tiene {size} anotaciones; se vio con {seen}.',
    remedy: 'Faltan anotaciones. Pedir el diario entero a quien lo lleva; los dispositivos aún tienen lo que escribieron.',
  },
  'log-differs-from-seen': {
    says: 'El diario de {size} anotaciones no continúa el que se vio.',
    remedy: 'No fiarse de él. Comparar con los dispositivos y con archivos de entrega anteriores.',
  },
  'receipt-out-of-place': { says: 'Un recibo dice lugar {said}; está en el lugar {found}.', remedy: DISTRUST },
  'receipt-before-last': { says: 'Se dice que la anotación {index} llegó antes que la que la precede.', remedy: DISTRUST },
  'key-of-another-log': { says: 'La clave del diario en el archivo no es la que se dio.', remedy: DISTRUST },
  'file-of-another-kind': {
    says: 'El archivo no empieza por «{wanted}».',
    remedy: 'Tomar el archivo como se escribió, no lo que se desempaquetó de él.',
  },
  'file-line-malformed': { says: 'Una línea no es como la describe el formato.', remedy: DISTRUST },
  'file-cut-short': { says: 'El archivo acaba antes del byte {wanted}.', remedy: 'Pedir el archivo otra vez: no se copió entero.' },
  'file-goes-on': { says: 'El archivo sigue después de su sello.', remedy: DISTRUST },
  'file-section-missing': { says: 'La sección «{section}» no está donde le toca.', remedy: DISTRUST },
  'file-section-out-of-place': { says: 'La sección «{section}» está fuera de lugar.', remedy: DISTRUST },
  'file-section-too-long': { says: 'Una sección de {bytes} bytes; el límite es {limit}.', remedy: DISTRUST },
  'file-section-differs': { says: 'Los bytes de la sección «{section}» no tienen el hash que está delante.', remedy: DISTRUST },
  'file-section-malformed': { says: 'El campo «{field}» de la sección «{section}» falta o no es como se describe.', remedy: DISTRUST },
  'file-size-differs': { says: 'El archivo dice {said} anotaciones y contiene {found}.', remedy: DISTRUST },
  'file-root-differs': { says: 'Las {size} anotaciones no tienen la raíz que firma el punto de control.', remedy: DISTRUST },
  'file-head-of-no-entry': { says: 'El dispositivo {device} firmó una anotación {sequence} que no está en el archivo.', remedy: DISTRUST },
  'file-device-without-key': { says: 'El archivo no contiene la clave del dispositivo {device}.', remedy: DISTRUST },
  'file-attachment-not-named': { says: 'Ninguna anotación nombra el anexo {hash}.', remedy: DISTRUST },
  'file-attachments-differ': {
    says: 'La lista de anexos que faltan no es lo que nombran las anotaciones y no contiene el archivo.',
    remedy: DISTRUST,
  },
  'file-seal-differs': { says: 'El sello es de otras secciones.', remedy: DISTRUST },
} satisfies NoticeTexts<'record'>;
