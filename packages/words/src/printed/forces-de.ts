import type { ForceTexts } from './texts.ts';

/** What a screen tells of forces, in German. */
export const FORCES_DE: ForceTexts = {
  'interaction.title': 'Wie die Schrauben aufeinander wirken',
  'interaction.lead': 'Wird eine Schraube angezogen, entlastet oder belastet sie ihre Nachbarn. Kräfte nach jeder Runde, nach {model}:',
  'interaction.model.ring section': 'einem Modell des Ringquerschnitts',
  'interaction.model.plate on a bed': 'einem Modell der Bleche auf dem, was zwischen ihnen liegt',
  'interaction.model.given matrix': 'der Matrix, die für diese Verbindung angegeben ist',
  'interaction.limits':
    'Grenzen dieser Zahlen: Das Modell ist linear, verklebt und ohne Spalt, eine Schraube ist eine Feder: 5 bis 7 % gegen eine Schraube als Körper in weichen Verbindungen. Versatz der Flanschflächen, kriechende Dichtungen und streuende Reibung kommen hinzu.',
  'interaction.round': 'Runde',
  'interaction.way': 'Reihenfolge',
  'interaction.setting': 'Einstellung',
  'interaction.forces': 'Kräfte danach',
  'interaction.range': '{least} bis {greatest}',
  'interaction.peak': 'Höchste unterwegs',
  'interaction.worst': 'Größte Abweichung',
  'interaction.moving': 'Muttern, die sich bewegen',
  'interaction.minutes': 'Minuten',
  'interaction.custom':
    'Wie üblich an derselben Verbindung (steigende Runden in der Reihenfolge, dann rundum mit der Endeinstellung): {rounds, plural, one {# Runde} other {# Runden}}, {minutes} min, dann weicht die schlechteste Schraube um {worst} ab.',
  'interaction.planned':
    'Geplant: {rounds, plural, one {# Runde} other {# Runden}}, {changes, plural, =0 {kein Wechsel der Einstellung innerhalb einer Runde} one {# Wechsel der Einstellung innerhalb einer Runde} other {# Wechsel der Einstellung innerhalb einer Runde}}, {minutes} min, Arbeit {energy} J; die schlechteste Schraube weicht dann um {worst} von ihrem Sollwert {target} ab. Gewünscht: {wanted}.',
  'interaction.several':
    'Schrauben stehen eine Zeit lang über ihrem Sollwert, bis {peak}: Der Ingenieur genehmigt diesen Ablauf, und eine zweite Person bestätigt jeden Wechsel der Einstellung.',
  'interaction.strip': 'nach Runde {round}: größte Abweichung {worst}',
  'interaction.strips-title': 'Kräfte der Schrauben von {tag} nach jeder von {rounds} Runden, in Prozent des Sollwerts',
  'interaction.ring-title': 'Kräfte rund um den Ring {tag}: nach der letzten Runde und nach einer früheren',
  'interaction.ring-key':
    'Kräftige Linie: nach der letzten Runde. Dünne Linie: nach einer früheren. Kreis: Sollwert; gestrichelt: gewünscht.',
  'scatter.one': 'Eine Schraube im Fenster',
  'scatter.all': 'Alle {bolts} Schrauben im Fenster',
  'scatter.window': 'zwischen dem, was sie mindestens haben muss, und Schaden',
  'scatter.below': 'unter dem, was schaden würde',
  'scatter.chance': 'in {chance} der Fälle',
  'scatter.nearly': 'in mehr als 99,9 % der Fälle',
  'scatter.certificate': 'Zertifikat der Einstelltabelle',
  'scatter.repeatability': 'Wiederholbarkeit des Werkzeugs',
  'scatter.lot mean': 'mittlere Reibung des Loses',
  'scatter.bolt to bolt': 'Reibung von Schraube zu Schraube',
  'scatter.share': '{share}',
  'scatter.bell-title': 'Verteilung der Vorspannkraft um {mean} mit ihrem Fenster',
  'scatter.bars-title': 'Was die Streuung der Vorspannkraft bestimmt',
  'rotation.title': 'Drehung ab handfest',
  'rotation.text': 'etwa {expected}; unter {low} oder über {high} noch einmal hinsehen',
  'step.next': 'Nächstbeste: {setting} ({torque})',
  'step.angle-window': 'fehlen bis {minus}, wird weitergedreht; mehr als {plus} darüber: fragen',
  'step.interpolated': 'interpoliert, nicht gemessen',
  'sequence.painted': 'Aufgemalte Nummern: Wird die Reihenfolge auf den Stahl gemalt, gehört diese Nummer an jede Schraube',
  'sequence.painted-lead': 'Eine aufgemalte Nummer ist nicht die Nummer der Schraube.',
};
