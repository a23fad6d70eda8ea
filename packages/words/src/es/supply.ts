import type { NoticeTexts } from '../notice-texts.ts';

export const supplyTexts = {
  'battery-rating': {
    says: 'Batería {serial}: la tensión o la capacidad nominal no se conoce o es absurda.',
    remedy: 'Leer ambas en su placa, V y Ah.',
  },
  'battery-health': {
    says: 'Batería {serial}: su estado no está entre 0 y 100 %.',
    remedy: 'Anotar 100 % para una nueva; menos según sus ciclos.',
  },
  'battery-gauge': {
    says: 'Batería {serial}: «{lit}» no es lectura de un indicador de cuatro barras.',
    remedy: 'Contar las barras encendidas: de 0 a 4.',
  },
  'battery-temperature': { says: 'Batería {serial}: su temperatura es absurda.', remedy: 'Anotar los °C de la batería, no del aire.' },
  'battery-charge': {
    says: 'Batería {serial}: su carga está por debajo de vacía o por encima de llena.',
    remedy: 'Leer otra vez el indicador: de 0 a 4 barras.',
  },
  'battery-cells': {
    says: 'Batería {serial}: sus celdas, la corriente o el corte de la herramienta, o el par no están por encima de cero.',
    remedy: 'Tomar las celdas de la hoja de datos de la batería; corriente y corte, del banco de pruebas.',
  },
  'gauge-reading': { says: '«{lit}» no es lectura de un indicador de cuatro barras.', remedy: 'Contar las barras encendidas: de 0 a 4.' },
  'energy-impossible': {
    says: 'La energía de una batería llena no se conoce o no está por encima de cero.',
    remedy: 'Leer V y Ah en su placa.',
  },
  'draw-impossible': {
    says: 'El consumo de un tornillo no está por encima de cero, o su mínimo supera a su máximo.',
    remedy: 'Calcularlo de par y giro, o de caídas registradas del indicador.',
  },
  'battery-no-working': {
    says: 'La batería {serial} está a {celsius} °C; trabaja de {low} a {high} °C.',
    remedy: 'Tomar una guardada al calor, o dejarla enfriar.',
  },
  'battery-no-charging': {
    says: 'La batería {serial} está a {celsius} °C; se puede cargar de {low} a {high} °C.',
    remedy: 'Nunca cargar una recién traída de la helada: antes dejarla templar, o enfriar.',
  },
  'battery-first-charge': {
    says: 'La batería {serial} es nueva y solo está cargada en parte.',
    remedy: 'Cargarla del todo antes de su primer trabajo.',
  },
  'battery-low': {
    says: 'La batería {serial} muestra una barra o ninguna: eso no garantiza nada.',
    remedy: 'Decidir ahora: cambiarla, ¿o basta para los tornillos que quedan? Nunca empezar con ella una etapa de ángulo.',
  },
  'battery-cannot-push': {
    says: 'La etapa necesita {torque}; la batería {serial}, a {celsius} °C y con su carga, puede dar {greatest}.',
    remedy: 'Tomar una batería caliente y llena, una mayor, u otra herramienta. No probar con el tornillo.',
  },
  'batteries-too-few': {
    says: '{pulls, plural, one {# apriete no está cubierto} other {# aprietes no están cubiertos}} por las baterías disponibles; {more, plural, one {hace falta # llena más} other {hacen falta # llenas más}}.',
    remedy: 'Traerlas o cargarlas antes de la primera unión.',
  },
  'batteries-too-weak': {
    says: 'Ninguna batería disponible hace con seguridad ni uno solo de estos tornillos.',
    remedy: 'Tomar una herramienta con batería mayor, o una de red.',
  },
  'joint-not-covered': {
    says: 'Las baterías disponibles no cubren todas las etapas de la unión {joint}.',
    remedy: 'No empezarla hasta que las cubran.',
  },
  'pull-without-draw': {
    says: 'No se sabe lo que el tornillo {bolt} de la unión {joint} consume de una batería.',
    remedy: 'Anotar su par y su giro.',
  },
  'draw-assumed': {
    says: 'El consumo de un tornillo se basa en {drops, plural, =0 {ninguna caída registrada} one {# caída registrada} other {# caídas registradas}} del indicador: es una suposición.',
    remedy: 'Registrar el tornillo en que baja el indicador; cada caída lo afina.',
  },
  'drop-count': {
    says: '«{bolts}» tornillos entre dos caídas del indicador no puede ser.',
    remedy: 'Anotar cuántos tornillos se acabaron entre ellas.',
  },
  'log-too-short': {
    says: 'Un registro de {found, plural, =0 {nada} one {# lectura} other {# lecturas}} dice demasiado poco; hacen falta {least}.',
    remedy: 'Registrar más cargas o trabajos. De tan pocos no se estima nada.',
  },
  'log-impossible': {
    says: 'Un registro contiene lecturas por debajo de cero o ninguna, o su confianza no está entre 50 y 100 %.',
    remedy: 'Corregir la anotación. Tal como está no se aprende nada de ella.',
  },
  'works-all-alike': {
    says: 'Todos los trabajos costaron lo mismo: el consumo fijo y el rendimiento no se pueden separar.',
    remedy: 'Registrar también trabajos de otro par o giro.',
  },
  'socket-reading': {
    says: 'Carga en ruta: el fusible de la toma o la corriente no está por encima de cero.',
    remedy: 'Leer el fusible en la toma o en la caja de fusibles; nunca adivinarlo.',
  },
  'socket-fuse': {
    says: 'La carga en ruta tomaría {current} A; la toma tiene un fusible de {fuse} A.',
    remedy: 'Cargar con menos corriente, o en una toma de fusible mayor. Nunca poner un fusible mayor en la misma toma.',
  },
  'socket-near-fuse': {
    says: 'La carga en ruta toma {current} A de una toma con fusible de {fuse} A: más de lo que debe dar por mucho tiempo.',
    remedy: 'Una batería cada vez, con el motor en marcha.',
  },
  'supply-reading': {
    says: 'Herramienta {serial}: falta una lectura de su alimentación o no está por encima de cero.',
    remedy: 'Medirla en la herramienta mientras funciona.',
  },
  'supply-weak': {
    says: 'Herramienta {serial}: hay {what}; se pide {wanted}.',
    remedy: 'Cable o manguera más corta y gruesa, otra toma, o una fuente mayor.',
  },
  'supply-unprotected': {
    says: 'Herramienta {serial}: sin interruptor diferencial.',
    remedy: 'Poner uno entre la toma y la herramienta antes de enchufarla.',
  },
  'supply-dry-air': { says: 'Herramienta {serial}: su aire no lleva aceite.', remedy: 'Llenar el lubricador: un motor seco pierde par.' },
  'supply-hose-changed': {
    says: 'Herramienta {serial}: su manguera no tiene la longitud que tenía en la calibración.',
    remedy: 'Comprobar la herramienta con esta manguera antes del primer tornillo.',
  },
  'supply-hose': {
    says: 'Herramienta {serial}: las mangueras admiten {rating} bar; pueden llegarles {wanted} bar.',
    remedy: 'Tomar mangueras y acoples de la presión de la bomba; buscar cortes y dobleces.',
  },
  'valve-impossible': {
    says: 'Válvula {tag}: una dimensión, un factor o una carga no está por encima de cero.',
    remedy: 'Leer otra vez su hoja de datos.',
  },
  'valve-limit-missing': {
    says: 'Válvula {tag}: no está anotado el par máximo en el husillo del propietario.',
    remedy: 'Conseguirlo por escrito; hasta entonces, a mano.',
  },
  'valve-permission-missing': {
    says: 'Válvula {tag}: nadie de operación ha permitido moverla.',
    remedy: 'Anotar quién lo permitió, y para cuándo.',
  },
  'valve-direction-missing': {
    says: 'Válvula {tag}: no está anotado hacia qué lado abre.',
    remedy: 'Mirar el volante: algunas abren en sentido horario.',
  },
  'valve-thermal-binding': {
    says: 'La válvula {tag} se cerró a otra temperatura: la compuerta puede estar trabada.',
    remedy: 'No forzarla. Preguntar a operación; dejar que se igualen las temperaturas.',
  },
  'valve-needs-more': {
    says: 'La válvula {tag} necesita {needed}; el propietario admite {limit}.',
    remedy: 'Pedir a operación que quite la presión, o liberar empaquetadura y husillo.',
  },
  'valve-may-need-more': {
    says: 'La válvula {tag} puede necesitar {needed}; el propietario admite {limit}.',
    remedy: 'Si no se mueve en el límite, parar y avisar. El ajuste no se sube.',
  },
  'valve-stem-yields': {
    says: 'Válvula {tag}: en el límite del propietario su husillo está a {found}; cede a {allowed}.',
    remedy: 'Pedir al propietario un límite que el husillo aguante.',
  },
  'valve-long-unmoved': {
    says: 'La válvula {tag} no se ha movido en años.',
    remedy: 'Ejercitarla con suavidad, unas vueltas a un lado y a otro, a mano o con el ajuste más bajo.',
  },
  'valve-turns-differ': {
    says: 'Válvula {tag}: {turns} vueltas según carrera y avance; una válvula de aguas de su medida da de {low} a {high}.',
    remedy: 'Las entradas de rosca o la carrera pueden estar mal. Contar las vueltas a mano antes de poner una herramienta.',
  },
  'valve-few-turns': {
    says: 'La válvula {tag} da {turns} vueltas: ambos extremos son de la mano, y no queda nada para una herramienta.',
    remedy: 'Girarla a mano.',
  },
  'valve-by-hand': { says: 'Válvula {tag}: ningún ajuste está por debajo de {limit}.', remedy: 'Girarla a mano.' },
} satisfies NoticeTexts<'supply'>;
