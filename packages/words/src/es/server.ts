import type { NoticeTexts } from '../notice-texts.ts';

export const serverTexts = {
  'not-signed-in': {
    says: 'No hay sesión iniciada, o este dispositivo no se ha unido.',
    remedy: 'Iniciar sesión, o unir el dispositivo de nuevo.',
  },
  'not-allowed': { says: 'Esta función no hace eso.', remedy: 'Preguntar al planificador.' },
  'not-found': {
    says: 'Aquí no hay nada accesible.',
    remedy: 'Comprobar la dirección; preguntar al planificador si se pertenece al trabajo.',
  },
  'sign-in-failed': {
    says: 'Nombre y contraseña no encajan.',
    remedy: 'Escribirlos otra vez; el planificador puede hacer una cuenta nueva.',
  },
  'passkey-not-taken': {
    says: 'No se aceptó la llave de acceso: la respuesta llegó tarde, o no es de esta dirección.',
    remedy:
      'Empezar otra vez. Abrir la dirección por la que también los demás llegan a este servidor; una dirección hecha de números no puede tener llaves de acceso.',
  },
  'passkey-not-known': {
    says: 'Esta llave de acceso no se conoce aquí.',
    remedy: 'Iniciar sesión con nombre y contraseña, y luego añadir una llave de acceso en la configuración.',
  },
  'code-not-valid': {
    says: 'El código es erróneo, ya se usó o es demasiado viejo.',
    remedy: 'Pedir uno nuevo al planificador: vale diez minutos y para un solo dispositivo.',
  },
  'name-taken': { says: 'Ya hay una cuenta {name}.', remedy: 'Tomar otro nombre.' },
  'last-planner': { says: 'Esta es la última cuenta de un planificador.', remedy: 'Hacer antes otro planificador.' },
  'question-malformed': {
    says: 'El campo «{field}» falta o no es como se describe.',
    remedy: 'Preguntar como describe /api/v1/openapi.json.',
  },
  'body-not-json': { says: 'El contenido no es JSON en UTF-8.', remedy: 'Preguntar como describe /api/v1/openapi.json.' },
  'body-too-large': { says: 'El contenido es mayor que {limit} bytes.', remedy: 'Enviarlo en partes menores.' },
  'body-cut-short': { says: 'El contenido acabó antes de tiempo.', remedy: 'Enviarlo otra vez.' },
  'hash-of-other-bytes': { says: 'Los bytes no tienen el hash {hash}.', remedy: 'Enviar el archivo otra vez; no se guardó nada de él.' },
  'asked-too-often': { says: 'Se preguntó demasiado a menudo.', remedy: 'Esperar {seconds} s.' },
  'from-another-site': { says: 'La petición vino de una página de otro sitio.', remedy: 'Abrir la dirección de este mismo servidor.' },
  'store-not-reachable': {
    says: 'Ahora mismo los libros no se pueden escribir ni leer.',
    remedy: 'No se ha perdido nada: los dispositivos conservan lo que no se confirmó. Mirar el disco o la base de datos; probar otra vez.',
  },
  'server-defect': { says: 'El servidor falló en la petición {request}.', remedy: 'Avisar con ese número; no se confirmó nada.' },
  'report-too-long': {
    says: 'El registro tiene {size} entradas; aquí se hace un informe hasta {most}.',
    remedy: 'Hacerlo junto al servidor: clampwright report TRABAJO ARCHIVO.pdf.',
  },
  'log-smaller-than-asked': { says: 'El diario tiene {size} anotaciones.', remedy: 'Preguntar dentro de eso.' },
} satisfies NoticeTexts<'server'>;
