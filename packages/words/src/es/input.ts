import type { NoticeTexts } from '../notice-texts.ts';

export const inputTexts = {
  'file-missing': { says: 'El archivo {file} no está.', remedy: 'Ponerlo en la carpeta del trabajo, o corregir su nombre.' },
  'file-empty': { says: 'El archivo {file} está vacío.', remedy: 'Anotar al menos los encabezados y una fila.' },
  'file-too-large': { says: 'El archivo {file} es mayor que {limit}.', remedy: 'Repartir el trabajo en varias carpetas.' },
  'file-not-text': {
    says: 'El archivo {file} no es un archivo de texto.',
    remedy: 'Guardarlo desde la hoja de cálculo como XLSX o CSV (UTF-8).',
  },
  'encoding-assumed': {
    says: 'El archivo {file} no es UTF-8; se leyó como {encoding}.',
    remedy: 'Comprobar nombres con acentos y diéresis, o guardar el archivo como UTF-8.',
  },
  'path-leaves-folder': {
    says: 'La ruta {path} sale de la carpeta del trabajo.',
    remedy: 'Poner el archivo en la carpeta del trabajo y nombrarlo desde ahí.',
  },
  'csv-broken': {
    says: 'La tabla no se puede leer a partir de aquí: {problem}.',
    remedy: 'Buscar en esta fila unas comillas sin cerrar o un separador de más.',
  },
  'heading-row-missing': {
    says: 'No se reconoció ninguna fila de encabezados.',
    remedy: 'Una de las primeras filas debe nombrar las columnas, entre ellas: {wanted}.',
  },
  'column-missing': { says: 'Falta la columna «{wanted}».', remedy: 'Añadirla, con uno de los encabezados de docs/columns.md.' },
  'column-twice': {
    says: 'El encabezado «{heading}» significa {meaning}, y «{other}» también.',
    remedy: 'Dejar uno de los dos, o decir cuál es, en su encabezado en la aplicación o con --map "{heading}={meaning}".',
  },
  'column-unclear': {
    says: 'El encabezado «{heading}» puede significar: {candidates}.',
    remedy:
      'Decir una vez qué significa, en su encabezado en la aplicación o con --map "{heading}={example}", o --map "{heading}=ignore". Se recuerda en mapping.yaml.',
  },
  'column-asked': {
    says: 'Ningún encabezado significa {wanted}; no se entendieron {candidates}.',
    remedy:
      'Si es uno de estos, decirlo una vez, en su encabezado en la aplicación o con --map "{example}={wanted}". Si no, añadir la columna.',
  },
  'heading-map-unused': {
    says: '--map "{heading}={means}" no encaja con ninguna tabla de este trabajo.',
    remedy: 'Escribir el encabezado como está en el archivo, y un significado de docs/columns.md.',
  },
  'workbook-broken': {
    says: 'El libro de cálculo no se puede leer: {problem}.',
    remedy: 'Abrirlo en la hoja de cálculo y guardarlo como XLSX.',
  },
  'workbook-unsafe': {
    says: 'Se rechaza el libro de cálculo: {problem}.',
    remedy: 'Una lista de uniones no necesita nada así. Preguntar de dónde viene el archivo; copiar los valores a un libro nuevo.',
  },
  'workbook-old': {
    says: 'El libro de cálculo está cerrado con contraseña, o es del tipo antiguo (XLS).',
    remedy: 'Guardarlo como XLSX sin contraseña, o como CSV.',
  },
  'sheet-missing': { says: 'El libro de cálculo no tiene la hoja «{sheet}»; tiene {sheets}.', remedy: 'Corregir el nombre tras el #.' },
  'sheet-unclear': {
    says: 'Varias hojas pueden ser la buscada ({wanted}): {sheets}.',
    remedy: 'Nombrar la que vale, tras un #: {example}',
  },
  'rows-hidden': {
    says: '{rows, plural, one {También se leyó una fila oculta} other {También se leyeron # filas ocultas}}.',
    remedy: 'Borrar lo que ya no vale: ocultar no saca una fila de la lista.',
  },
  'cell-error': {
    says: 'La celda muestra un error, no un valor.',
    remedy: 'Arreglar la fórmula en la hoja de cálculo, o anotar el valor.',
  },
  'bolt-list-uneven': {
    says: 'Las filas de la unión {tag} no dan a cada tornillo su propio número y lugar; mirar {bolts}.',
    remedy: 'Numerar los tornillos desde 1 sin huecos, una fila cada uno, todos con x e y o ninguno.',
  },
  'column-ignored': { says: 'La columna «{heading}» no se entendió y no se usa.', remedy: 'Cambiarle el nombre si importa.' },
  'unit-unknown': {
    says: 'La unidad «{unit}» no es una de {wanted}.',
    remedy: 'Escribir la unidad entre paréntesis en el encabezado, o detrás del número.',
  },
  'unit-missing': {
    says: 'El número no tiene unidad.',
    remedy: 'Escribir una de {wanted} entre paréntesis en el encabezado, o detrás del número.',
  },
  'cell-empty': { says: 'Esta celda está vacía.', remedy: 'Anotar: {wanted}.' },
  'cell-formula': {
    says: 'La celda contiene una fórmula, no un valor.',
    remedy: 'Pegar el valor en su lugar, o calcular la hoja y guardarla; aquí nunca se ejecutan fórmulas.',
  },
  'number-wanted': { says: 'Esto no es un número.', remedy: 'Anotar: {wanted}.' },
  'quantity-wanted': { says: 'Esto no es un número.', remedy: 'Escribir un número, en {units}.' },
  'number-outside': { says: 'Este número no se puede usar.', remedy: 'Escribir un número de {low} a {high}.' },
  'whole-number-outside': { says: 'Este número no se puede usar.', remedy: 'Escribir un número entero de {low} a {high}.' },
  'number-ambiguous': {
    says: '«{read}» puede leerse como decimal o con separador de millares.',
    remedy: 'Escribirlo sin separador de millares; en un libro de cálculo, como número y no como texto.',
  },
  'number-absurd': {
    says: 'El número no es creíble.',
    remedy: 'Anotar: {wanted}, por encima de cero y hasta {largest}; comprobar la unidad.',
  },
  'label-too-long': {
    says: 'Este nombre tiene más de {most} caracteres o más de una línea.',
    remedy: 'Acortarlo: el registro guarda etiquetas, números de serie y lotes de hasta {most} caracteres.',
  },
  'word-unknown': { says: 'Esta palabra no se conoce aquí.', remedy: 'Anotar una de: {wanted}.' },
  'positions-unreadable': { says: 'Los tornillos no se pueden leer.', remedy: 'Escribir un número (8), o posiciones (1-4, 7, 9-12).' },
  'layout-unreadable': { says: 'La disposición no se puede leer.', remedy: 'Escribir «ring», o filas × columnas (2x4).' },
  'layout-contradicts-bolts': { says: 'La disposición {layout} no tiene {bolts} tornillos.', remedy: 'Corregir uno de los dos.' },
  'joint-contradicts-itself': {
    says: 'La unión {tag} está descrita dos veces: {field} es «{first}» en una fila y «{second}» en otra.',
    remedy: 'Las filas de una unión solo pueden diferir en lo que es de un subgrupo: posiciones, medida, grado, longitud, lote.',
  },
  'flange-contradicts': {
    says: '{flange} tiene {field} {table}; la lista dice {given}.',
    remedy: 'Corregir la lista, o dejar la celda vacía para que la llene la tabla de la norma.',
  },
  'flange-unreadable': { says: 'La brida no se puede leer.', remedy: 'Escribir «B16.5 NPS 8 Class 300» o «EN 1092-1 DN80 PN16».' },
  'friction-half-given': { says: 'El rozamiento se da solo a medias.', remedy: 'Anotar: {wanted}.' },
  'friction-implausible': {
    says: 'Ningún tornillo tiene este valor ({what}); se dan de {low} a {high}.',
    remedy: 'Comparar la cifra con el certificado, y ver si está en la columna correcta.',
  },
  'yaml-broken': {
    says: 'El archivo no se puede leer: {problem}.',
    remedy: 'Comparar la línea con el ejemplo que escribe «clampwright init».',
  },
  'yaml-unknown-key': { says: 'La palabra «{key}» no se conoce aquí.', remedy: 'Comparar con el ejemplo que escribe «clampwright init».' },
  'yaml-wrong-value': { says: 'Este valor no se puede usar.', remedy: 'Se pide: {wanted}.' },
  'date-unreadable': { says: 'Esto no es una fecha del calendario.', remedy: 'Escribir año-mes-día: 2026-11-25.' },
  'certificates-unclear': {
    says: 'La herramienta {serial} tiene dos certificados del {day}: {first} y {second}. No se eligió ninguno.',
    remedy: 'Dejar el que vale, o corregir la fecha del otro.',
  },
  'certificate-missing': {
    says: 'La herramienta {serial} no tiene certificado con tabla.',
    remedy: 'Dar aquí certificado y tabla, o ponerlos en el archivo de certificados.',
  },
  'certificate-of-no-tool': {
    says: 'La lista tiene un certificado de {serial}, que no es herramienta de este trabajo.',
    remedy: 'Nada, si la herramienta no se usa aquí; si no, comparar los números de serie.',
  },
  'record-joint-unknown': { says: 'En este trabajo no se emitió ficha para una unión «{tag}».', remedy: 'Uniones con ficha: {joints}.' },
  'record-step-unknown': { says: 'La unión no tiene la etapa «{step}».', remedy: 'Sus etapas: {steps}.' },
  'record-bolt-unknown': { says: 'La unión no tiene el tornillo {bolt}.', remedy: 'Sus tornillos son del 1 al {bolts}.' },
  'records-known': {
    says: 'El archivo {name} ya se anotó en este libro, byte por byte.',
    remedy: 'Anotar solo lo nuevo, como archivo propio.',
  },
  'entered-lot-unknown': {
    says: 'El lote {lot} no está inscrito en este libro, y el archivo no dice qué son sus conjuntos.',
    remedy: 'Escribir medida, grado y sistema tras «designation», junto al lote.',
  },
  'entered-tool-unknown': {
    says: 'La herramienta {tool} no está inscrita ni en este libro ni en el de la obra.',
    remedy: 'Comparar el número de serie, o inscribir antes la herramienta: clampwright register.',
  },
  'serial-twice': {
    says: 'El número de serie {serial} aparece dos veces.',
    remedy: 'Una herramienta aparece una vez; cambiar su tabla, no la herramienta.',
  },
  'lot-twice': { says: 'El lote {lot} aparece dos veces.', remedy: 'Dar a cada lote su propio nombre.' },
  'members-joint-unknown': {
    says: 'members.yaml habla de la unión {joint}, que la lista de uniones no tiene o que se dejó fuera.',
    remedy: 'Escribir la etiqueta como en la lista de uniones.',
  },
  'members-twice': { says: 'Dos entradas dicen qué sujeta la unión {joint}.', remedy: 'Dejar una de ellas.' },
  'members-no-flange': {
    says: 'La unión {joint} no es una brida normalizada con junta, y no se dan sus dimensiones.',
    remedy: 'Nombrar la brida en la lista de uniones y la junta aquí, o dar anillo, chapas o matriz.',
  },
  'row-broken': {
    says: 'La fila tiene {cells} celdas; los encabezados tienen {wanted}.',
    remedy: 'Buscar un separador que falte o sobre, o una coma dentro de un número.',
  },
} satisfies NoticeTexts<'input'>;
