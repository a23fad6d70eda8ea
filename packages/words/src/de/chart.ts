import type { NoticeTexts } from '../notice-texts.ts';

export const chartTexts = {
  'chart-empty': {
    says: 'Die Einstelltabelle von Werkzeug {serial} hat keine Einstellung zum Anziehen.',
    remedy: 'Die Einstellungen aus dem Kalibrierschein eintragen.',
  },
  'chart-other-serial': {
    says: 'Die Einstelltabelle gehört zur Seriennummer {chartSerial}, das Werkzeug ist {serial}.',
    remedy: 'Den Kalibrierschein genau dieses Werkzeugs laden. Die Tabelle eines Schwesterwerkzeugs gilt nicht.',
  },
  'chart-torque-absurd': {
    says: 'Das Drehmoment bei {setting} ist keine glaubhafte Zahl.',
    remedy: 'Die Zahl noch einmal vom Kalibrierschein übertragen, mit ihrer Einheit.',
  },
  'chart-setting-twice': {
    says: '{setting} steht zweimal da, mit {first} und {second}.',
    remedy: 'Die Zeile behalten, die der Kalibrierschein zeigt.',
  },
  'chart-not-monotone': {
    says: 'Das Drehmoment steigt nicht von {lower} ({lowerTorque}) nach {upper} ({upperTorque}).',
    remedy:
      'Beide Zellen mit dem Kalibrierschein vergleichen; stehen sie so darin, das Werkzeug neu kalibrieren lassen. Bis dahin wird die Tabelle nicht benutzt.',
  },
  'chart-gap': {
    says: 'Zwischen {lower} und {upper} fehlen Einstellungen.',
    remedy: 'Die fehlenden Zeilen eintragen; wurden sie nicht gemessen, nur das Gemessene nummerieren.',
  },
  'tool-too-small': {
    says: 'Werkzeug {tool} erreicht höchstens {largest}; das Verfahren verlangt {low} bis {high}.',
    remedy:
      'Ein größeres Werkzeug, einen Drehmomentvervielfältiger oder ein Verfahren und einen Schmierstoff nehmen, die weniger Drehmoment brauchen.',
  },
  'tool-too-large': {
    says: 'Die niedrigste Einstellung von Werkzeug {tool} gibt {smallest}; das Verfahren verlangt {low} bis {high}.',
    remedy: 'Ein kleineres Werkzeug nehmen.',
  },
  'chart-too-coarse': {
    says: 'Keine kalibrierte Einstellung von Werkzeug {tool} liegt zwischen {low} und {high}; die nächsten geben {below} und {above}.',
    remedy:
      'Ein anderes Werkzeug nehmen, eine Einstellung dazwischen kalibrieren lassen, oder der Eigner der Tabelle erlaubt das Interpolieren.',
  },
  'calibration-expired': {
    says: 'Die Kalibrierung von Werkzeug {serial} lief am {due} ab; gearbeitet wird am {workDate}.',
    remedy: 'Kalibrieren, oder ein Werkzeug nehmen, dessen Kalibrierschein den Tag abdeckt.',
  },
  'calibration-later': {
    says: 'Werkzeug {serial} wurde am {calibrated} kalibriert, nach dem Tag der Arbeit {workDate}.',
    remedy: 'Beide Daten prüfen.',
  },
  'calibration-due-soon': {
    says: 'Die Kalibrierung von Werkzeug {serial} wird am {due} fällig, in {days, plural, =0 {weniger als einem Tag} one {# Tag} other {# Tagen}}.',
    remedy: 'Die Kalibrierung bestellen oder vor diesem Tag fertig werden.',
  },
  'setting-interpolated': {
    says: '{setting} wurde nicht gemessen: zwischen den Nachbarn interpoliert, wie es der Eigner der Tabelle erlaubt.',
    remedy: 'Eine gemessene Einstellung vorziehen oder diese kalibrieren lassen.',
  },
  'accuracy-used-up': {
    says: 'Die Wiederholbarkeit des Werkzeugs von ±{repeatability} braucht die Genauigkeit auf, die das Verfahren erlaubt; die Unsicherheit des Kalibrierscheins kommt noch dazu.',
    remedy: 'Das Werkzeug vor jeder Schicht prüfen und sorgfältig kontrollieren.',
  },
} satisfies NoticeTexts<'chart'>;
