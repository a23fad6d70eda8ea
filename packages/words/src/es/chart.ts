import type { NoticeTexts } from '../notice-texts.ts';

export const chartTexts = {
  'chart-empty': {
    says: 'La tabla de la herramienta {serial} no tiene ningún ajuste para apretar.',
    remedy: 'Anotar los ajustes de su certificado de calibración.',
  },
  'chart-other-serial': {
    says: 'La tabla es del número de serie {chartSerial}, la herramienta es {serial}.',
    remedy: 'Cargar el certificado de esta misma herramienta. La tabla de una herramienta gemela no vale.',
  },
  'chart-torque-absurd': {
    says: 'El par en {setting} no es un número creíble.',
    remedy: 'Copiar otra vez la cifra del certificado, con su unidad.',
  },
  'chart-setting-twice': {
    says: '{setting} aparece dos veces, con {first} y {second}.',
    remedy: 'Dejar la línea que muestra el certificado.',
  },
  'chart-not-monotone': {
    says: 'El par no sube de {lower} ({lowerTorque}) a {upper} ({upperTorque}).',
    remedy:
      'Comparar ambas celdas con el certificado; si están así, hacer calibrar otra vez la herramienta. Hasta entonces la tabla no se usa.',
  },
  'chart-gap': {
    says: 'Entre {lower} y {upper} faltan ajustes.',
    remedy: 'Anotar las líneas que faltan; si no se midieron, numerar solo lo medido.',
  },
  'tool-too-small': {
    says: 'La herramienta {tool} llega como máximo a {largest}; el método pide de {low} a {high}.',
    remedy: 'Tomar una herramienta mayor, un multiplicador, o un método y un lubricante que necesiten menos par.',
  },
  'tool-too-large': {
    says: 'El ajuste más bajo de la herramienta {tool} da {smallest}; el método pide de {low} a {high}.',
    remedy: 'Tomar una herramienta menor.',
  },
  'chart-too-coarse': {
    says: 'Ningún ajuste calibrado de la herramienta {tool} está entre {low} y {high}; los más cercanos dan {below} y {above}.',
    remedy: 'Tomar otra herramienta, hacer calibrar un ajuste entre ambos, o que el dueño de la tabla admita interpolar.',
  },
  'calibration-expired': {
    says: 'La calibración de la herramienta {serial} venció el {due}; el trabajo es el {workDate}.',
    remedy: 'Calibrarla, o tomar una herramienta cuyo certificado cubra el día.',
  },
  'calibration-later': {
    says: 'La herramienta {serial} se calibró el {calibrated}, después del día del trabajo {workDate}.',
    remedy: 'Comprobar ambas fechas.',
  },
  'calibration-due-soon': {
    says: 'La calibración de la herramienta {serial} vence el {due}, en {days, plural, =0 {menos de un día} one {# día} other {# días}}.',
    remedy: 'Pedir la calibración, o acabar antes de ese día.',
  },
  'setting-interpolated': {
    says: '{setting} no se midió: está interpolado entre sus vecinos, como admite el dueño de la tabla.',
    remedy: 'Preferir un ajuste medido, o hacer calibrar este.',
  },
  'accuracy-used-up': {
    says: 'La repetibilidad de la herramienta, ±{repeatability}, agota la precisión que admite el método; la incertidumbre del certificado se suma.',
    remedy: 'Comprobar la herramienta antes de cada turno, e inspeccionar con cuidado.',
  },
} satisfies NoticeTexts<'chart'>;
