import type { NoticeTexts } from '../notice-texts.ts';

export const modelTexts = {
  'model-broken': {
    says: 'El modelo no se puede leer: el archivo está dañado o incompleto.',
    remedy: 'Exportarlo otra vez desde el programa de modelado.',
  },
  'model-text': {
    says: 'El texto del modelo está dañado aquí: {problem}.',
    remedy: 'Exportarlo otra vez; si vino por correo, pedirlo comprimido.',
  },
  'model-not-step': {
    says: 'Esto no es un archivo IFC en texto STEP.',
    remedy: 'Exportar IFC (terminación .ifc), no IFC-XML ni una imagen del modelo.',
  },
  'model-packed': { says: 'El modelo está comprimido.', remedy: 'Descomprimirlo: el archivo IFC está dentro.' },
  'model-schema': { says: 'El esquema {schema} no se lee.', remedy: 'Exportar como IFC 2x3, IFC 4 o IFC 4.3.' },
  'model-unit-missing': {
    says: 'El modelo no dice su unidad de longitud; se supusieron metros.',
    remedy: 'Comprobar una medida conocida.',
  },
  'model-without-bolts': {
    says: 'El modelo no contiene ningún tornillo que se pudiera entender.',
    remedy:
      'Exportar con los tornillos como elementos de fijación mecánicos (IfcMechanicalFastener); muchos programas los dejan fuera si no se piden.',
  },
  'fastener-unreadable': { says: 'Este elemento de fijación no se puede leer.', remedy: 'Mirarlo en el modelo.' },
  'fastener-no-bolt': { says: 'Esto no es un tornillo sino {kind}, y se deja fuera.', remedy: 'Nada, si es así.' },
  'fastener-without-place': {
    says: 'No se puede saber dónde está este elemento de fijación: su posición falta, va en círculo o cuelga de una retícula.',
    remedy: 'Exportar con posiciones locales, o anotar la unión a mano.',
  },
  'fastener-without-size': {
    says: 'Aquí no se halló ninguna medida de tornillo; se leyó, y no es medida: {tried}.',
    remedy: 'Completar la medida en la lista que se escribe, o dar al elemento su diámetro nominal en el modelo.',
  },
  'fastener-without-grade': {
    says: 'No se halló grado para los tornillos de «{tag}».',
    remedy: 'Completar el grado en la lista que se escribe.',
  },
  'fastener-contradicts': {
    says: 'El modelo dice dos cosas de este elemento de fijación ({what}): {first}, y {second}. No se tomó ninguna.',
    remedy: 'Preguntar al modelador, y completarlo en la lista que se escribe.',
  },
  'fastener-count': {
    says: 'El modelo dice aquí {said} tornillos, y muestra {found}.',
    remedy: 'Comparar con el plano; los lugares que no se muestran no están en la lista.',
  },
  'joint-not-flat': {
    says: 'Los tornillos de «{tag}» salen hasta {off} mm de un mismo plano.',
    remedy: 'Comprobar si son una sola unión.',
  },
  'bolts-on-one-spot': {
    says: 'En «{tag}» {bolts, plural, one {hay un tornillo} other {hay # tornillos}} donde ya hay otro.',
    remedy: 'El modelo puede tenerlos dos veces: comprobar antes de usar la lista.',
  },
  'joint-by-distance': {
    says: 'Nada en el modelo mantiene juntos {bolts, plural, one {el tornillo} other {los # tornillos}} de «{tag}»; se agruparon por distancia.',
    remedy: 'Comparar la unión con el plano, y darle su etiqueta.',
  },
  'grip-open': { says: 'El espesor apretado de «{tag}» está sin resolver: {why}.', remedy: 'Completarlo en la lista que se escribe.' },
} satisfies NoticeTexts<'model'>;
