import type { NoticeTexts } from '../notice-texts.ts';

export const aroundTexts = {
  'loosening-torque': {
    says: 'El par con que se apretó no está por encima de cero.',
    remedy: 'Anotarlo, o la precarga y el rozamiento de los que sale.',
  },
  'loosening-unknown': {
    says: 'Nada dice con qué se apretó {joint}.',
    remedy: 'Planificarla primero, o anotar par y herramienta; luego aflojar.',
  },
  'loosening-release-missing': {
    says: 'Una unión a presión solo se abre cuando el aislamiento está demostrado; falta anotar el permiso, o quién la liberó.',
    remedy: 'Anotar el permiso de aislamiento o de apertura de línea y el nombre de quien la liberó.',
  },
  'loosening-setting-only': {
    says: '{setting} es solo para aflojar.',
    remedy: 'Nunca debe apretar: bloquear el sentido de giro, y volver a cambiarlo antes de apretar el siguiente tornillo.',
  },
  'loosening-tool-small': {
    says: 'Soltarlo puede necesitar {needed}; el ajuste más alto es {largest}.',
    remedy: 'Tomar una herramienta mayor o un multiplicador. Nunca alargar el brazo, nunca golpear una herramienta bajo carga.',
  },
  'loosening-tool-near': {
    says: 'Soltarlo puede necesitar {needed}: casi todo lo que da la herramienta, {largest}.',
    remedy: 'Tener preparada una herramienta mayor, y aflojatodo.',
  },
  'loosening-socket': {
    says: 'Soltarlo puede necesitar {needed}; el vaso y el cuadradillo admiten {rating}.',
    remedy: 'Tomar vaso de impacto y cuadradillo del tamaño siguiente.',
  },
  'loosening-bolt': {
    says: 'Soltarlo puede necesitar {needed}; un tornillo gripado solo aguanta {limit}.',
    remedy: 'Parar en ese par y cambiar de método: aflojatodo, calor con permiso, cortar o partir la tuerca.',
  },
  'loosening-penetrant': {
    says: 'Estas tuercas se gripan o se parten.',
    remedy: 'Empapar con aflojatodo, limpiar los filetes que asoman y tener preparado un partetuercas.',
  },
  'lot-test-missing': {
    says: '{file} no contiene ningún ensayo de aptitud del lote {lot}.',
    remedy: 'Anotar la serie en suitability con el identificador de este lote. Hasta entonces sus uniones se detienen.',
  },
  'lot-friction-twice': {
    says: 'El lote {lot} tiene anotado el rozamiento y un ensayo de aptitud; cuenta el ensayo.',
    remedy: 'Dejar uno de los dos.',
  },
  'lot-test-few': {
    says: 'Lote {lot}: {found, plural, =0 {ningún conjunto ensayado} one {# conjunto ensayado} other {# conjuntos ensayados}}; se piden {wanted}.',
    remedy: 'Ensayar más conjuntos de este lote.',
  },
  'lot-test-reading': {
    says: 'Lote {lot}, conjunto {assembly}: una lectura no está por encima de cero.',
    remedy: 'Leer otra vez el registro, o ensayar otro conjunto.',
  },
  'lot-test-size': { says: 'Lote {lot}: falta la medida o la precarga especificada.', remedy: 'Anotar ambas.' },
  'lot-k-class-none': {
    says: 'El lote {lot} no cumple ninguna clase k: k_m = {mean}, V_k = {variation}.',
    remedy: 'Usarlo solo con un método que no necesite rozamiento, o devolverlo.',
  },
  'lot-force-low': {
    says: 'Lote {lot}: un conjunto alcanzó {found}; se pide {wanted}.',
    remedy: 'El lote no ha pasado: apartarlo y ensayar otro.',
  },
  'lot-rotation-low': {
    says: 'Lote {lot}: un conjunto giró menos de lo que debe antes de ceder.',
    remedy: 'El lote no ha pasado: apartarlo y ensayar otro.',
  },
  'lot-rotation-untested': {
    says: 'Lote {lot}: no se midió la reserva de giro.',
    remedy: 'Medirla donde el método gira los tornillos más allá del límite elástico.',
  },
  'lot-test-future': {
    says: 'Se dice que el lote {lot} se ensayó el {tested}, después del día del trabajo.',
    remedy: 'Leer otra vez la fecha.',
  },
  'lot-test-old': {
    says: 'El ensayo del lote {lot} tiene {days} días; se admiten {allowed}.',
    remedy: 'Ensayar otra vez: los lubricantes envejecen.',
  },
  'lot-test-temperature': {
    says: 'Los tornillos del lote {lot} están a {apart} °C de la temperatura de su ensayo.',
    remedy: 'Ensayar a la temperatura del trabajo; a más de {usual} °C de diferencia el rozamiento es otro.',
  },
  'lot-retest': {
    says: 'El lote {lot} se mojó o se volvió a lubricar después de su ensayo.',
    remedy: 'Su rozamiento no se conoce: ensayarlo otra vez antes de usarlo.',
  },
  'sample-none': { says: 'Ninguna unión pide muestra.', remedy: 'Anotar execution-class en job.yaml, o dar el número de tornillos.' },
  'sample-size': {
    says: 'No se pueden sortear «{size}» tornillos de {bolts}.',
    remedy: 'Dar un número entero de 1 al número de tornillos.',
  },
  'sample-seed': { says: '«{seed}» no es una semilla.', remedy: 'Dar un número entero desde 0, y registrarlo.' },
  'sequential-limits': {
    says: 'Un plan de tipo {type} toma de {least} a {most} tornillos.',
    remedy: 'Anotar las líneas de la norma para ese tipo.',
  },
  'sequential-short': {
    says: 'Las líneas no llegan a {most} tornillos.',
    remedy: 'Anotar aceptación y rechazo para cada número de tornillos.',
  },
  'sequential-crossed': {
    says: 'Después de {bolts} tornillos la misma cuenta aceptaría y rechazaría.',
    remedy: 'Leer otra vez ambas líneas.',
  },
  'sequential-undecided': {
    says: 'Después de {most} tornillos el plan debe aceptar o rechazar.',
    remedy: 'Anotar ambos límites para el último tornillo, con diferencia de uno.',
  },
  'sequential-over': {
    says: 'El resultado ya está decidido ({verdict}): ningún tornillo más cuenta.',
    remedy: 'Empezar otro plan si hay que mirar más.',
  },
  'sequential-twice': {
    says: 'El tornillo {bolt} ya se miró.',
    remedy: 'Tomar el siguiente tornillo del sorteo; un tornillo cuenta una vez.',
  },
  'gap-none': { says: 'No se leyó ninguna separación.', remedy: 'Leerla en 4 u 8 puntos alrededor de la brida.' },
  'gap-points': { says: 'La pasada {pass} tiene {points} lecturas.', remedy: 'Leer la separación en 4 u 8 puntos.' },
  'gap-negative': { says: 'Pasada {pass}, punto {point}: una separación no está por debajo de cero.', remedy: 'Leerla otra vez.' },
  'gap-uneven': {
    says: 'La separación difiere {spread} alrededor de la brida; se admite {allowed}.',
    remedy: 'Parar. Aliviar el lado estrecho, acercar el lado ancho con ajustes bajos y leer otra vez.',
  },
} satisfies NoticeTexts<'around'>;
