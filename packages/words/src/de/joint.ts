import type { NoticeTexts } from '../notice-texts.ts';

export const jointTexts = {
  'no-bolts': {
    says: 'Die Verbindung hat keine Schrauben.',
    remedy: 'Eintragen, wie viele Schrauben sie hat oder zu welchem Flansch sie gehört.',
  },
  'positions-wrong': {
    says: 'Die Untergruppen ergeben nicht die {boltCount} Schrauben der Verbindung (fehlend: {missing}; doppelt: {twice}).',
    remedy: 'Jede Schraube genau einer Untergruppe zuordnen.',
  },
  'sequence-wrong': {
    says: 'Die Reihenfolge des Ingenieurs nennt nicht jede der {boltCount} Schrauben einmal.',
    remedy: 'Die Reihenfolge berichtigen; sie wird nicht durch Raten ergänzt.',
  },
  'tools-at-once-wrong': {
    says: '{tools} Werkzeuge zugleich teilen {boltCount} Schrauben nicht gleichmäßig auf; der Plan nimmt eines.',
    remedy: 'Eine Zahl von Werkzeugen nehmen, die die Schrauben teilt.',
  },
  'tool-unknown': {
    says: 'Werkzeug {serial} ist nicht unter den Werkzeugen des Auftrags.',
    remedy: 'Mit seiner Einstelltabelle hinzufügen oder ein anderes nennen.',
  },
  'no-tool': {
    says: 'Der Auftrag hat kein Werkzeug mit Einstelltabelle.',
    remedy: 'Ein Werkzeug mit der Tabelle aus seinem Kalibrierschein hinzufügen.',
  },
  'tool-chart-faulty': {
    says: 'Die Einstelltabelle von Werkzeug {serial} hat Fehler, also wird nichts daraus gelesen.',
    remedy: 'Die Tabelle richten; ihre Fehler stehen beim Werkzeug.',
  },
  'several-tools': {
    says: 'Kein einzelnes Werkzeug deckt jeden Schritt ab; der Plan nimmt {tools}.',
    remedy: 'Alle mitbringen und bei jedem Schritt auf der Karte lesen, welches.',
  },
  'lot-unknown': { says: 'Los {lot} ist nicht unter den Losen des Auftrags.', remedy: 'Das Los mit Zeugnis oder Prüfung hinzufügen.' },
  'lot-failed': {
    says: 'Los {lot} hat seine Prüfung nicht bestanden.',
    remedy: 'Nicht verwenden. Ein anderes Los nehmen, oder neu prüfen, wenn die Ursache bekannt ist.',
  },
  'turned-not-tested': {
    says: 'Los {lot} wurde {tested, select, head {am Kopf} other {an der Mutter}} gedreht geprüft; hier wird {turned, select, head {am Kopf} other {an der Mutter}} gedreht. Ein Drehmoment gilt nur wie geprüft.',
    remedy:
      '{tested, select, head {Am Kopf} other {An der Mutter}} drehen, oder das Los {turned, select, head {am Kopf} other {an der Mutter}} gedreht prüfen.',
  },
  'datum-missing': {
    says: 'Es ist nicht gesagt, wo Schraube 1 ist, wie gezählt wird und von welcher Seite man schaut.',
    remedy: 'Den Bezugspunkt eintragen, oder der Trupp markiert Schraube 1 am Stahl und bestätigt es.',
  },
  'permit-missing': {
    says: 'Eine Druckverbindung braucht ihren Erlaubnisschein für Absperrung oder Öffnen der Leitung, bevor eine Mutter angefasst wird; keiner ist eingetragen.',
    remedy: 'Die Nummer des Erlaubnisscheins eintragen.',
  },
  'zone-missing': {
    says: 'Es ist nicht gesagt, ob die Verbindung in einem explosionsgefährdeten Bereich liegt.',
    remedy: 'Die Zone jeder Verbindung eintragen, oder „zone: none“ für den ganzen Auftrag.',
  },
  'hot-work-missing': {
    says: 'Werkzeug {tool} ist eine Zündquelle; in Zone {zone} braucht es Heißarbeitserlaubnis und Freimessung.',
    remedy: 'Beide Nummern eintragen, oder ein Werkzeug ohne Strom planen.',
  },
  'wet-retest': {
    says: 'Regen ist angegeben. Nasse oder verrostete Garnituren haben nicht die Reibung, mit der sie geprüft wurden.',
    remedy: 'Lose trocken halten; ein nasses Los neu prüfen, bevor es angezogen wird.',
  },
  'arm-length-unknown': {
    says: 'Der Arm von Werkzeug {serial} hat keine Länge, also ist seine Reaktionskraft unbekannt.',
    remedy: 'Rechtwinklig vom Antrieb bis zur Anlage messen und eintragen.',
  },
  'arm-overloaded': {
    says: 'Der Schritt braucht {torque}; der Reaktionsarm ist bis {rating} zugelassen.',
    remedy: 'Einen Arm nehmen, der für das Drehmoment zugelassen ist.',
  },
  'reaction-point-overloaded': {
    says: 'Der Arm drückt mit {force}; sein Abstützpunkt darf {limit} aufnehmen.',
    remedy: 'Einen stärkeren Abstützpunkt oder einen längeren zugelassenen Arm wählen. Nie einen Arm auf der Baustelle verlängern.',
  },
  'reaction-point-unknown': {
    says: 'Der Arm wird mit {force} drücken; kein Abstützpunkt ist genannt.',
    remedy: 'Einen nennen, der es aufnimmt: eine feste Nachbarmutter, ein Flanschrand, ein eigens gebauter Anschlag.',
  },
  'socket-does-not-fit': {
    says: 'Die Stecknuss {socket} stößt bei einem Schraubenabstand von {pitch} an den Nachbarsechskant: Es fehlen {lacking}.',
    remedy: 'Eine dünnwandige Stecknuss nehmen, die für das Drehmoment zugelassen ist.',
  },
  'socket-meets-wall': {
    says: 'Die Stecknuss {socket} stößt an die Wand, {wall} von der Schraube.',
    remedy: 'Eine kleinere Stecknuss nehmen oder das andere Teil drehen.',
  },
  'socket-unknown': {
    says: 'Beim Werkzeug ist keine Stecknuss mit Schlüsselweite {acrossFlats} eingetragen.',
    remedy: 'Ihren Außendurchmesser eintragen, damit die Freigängigkeit geprüft werden kann.',
  },
  'yield-likely': {
    says: '{share} der Schrauben würden beim Anziehen über die Streckgrenze gehen.',
    remedy: 'Drehmoment, Reibung und Güte prüfen; eine Einstellung oder einen Schmierstoff nehmen, die Reserve lassen.',
  },
  'below-target-likely': {
    says: '{share} der Schrauben können unter der Soll-Vorspannkraft bleiben.',
    remedy: 'Weniger Streuung hilft: ein geprüftes Los, ein besseres Werkzeug; oder die Zustimmung des Ingenieurs.',
  },
  'torque-unit-doubt': {
    says: '{torque} hieße {basis, select, yield {eine über die Streckgrenze gedrehte Schraube bei k-Faktor {k}} other {einen k-Faktor von {k}}}; in der anderen Drehmomenteinheit gelesen wäre es eine gewöhnliche Zahl.',
    remedy: 'Prüfen, ob die Zahl in N·m oder in lbf·ft gilt.',
  },
  'torque-implausible': {
    says: '{torque} hieße {basis, select, yield {eine über die Streckgrenze gedrehte Schraube bei k-Faktor {k}} other {einen k-Faktor von {k}, den kein Schmierstoff hat}}.',
    remedy: 'Drehmoment, Vorspannkraft und Größe mit der Vorgabe vergleichen.',
  },
  'engineer-override': {
    says: 'Die Vorgabe des Ingenieurs gilt anstelle unserer ({what}).',
    remedy: 'Nichts zu tun; auf Plan und Karte als seine gezeigt.',
  },
  'figure-not-used': {
    says: 'Die Liste gibt einen Wert an ({what}); dieses Regelwerk hat dafür keine Verwendung, und der Plan folgt ihm nicht.',
    remedy:
      'Weglassen, oder das Regelwerk nennen, das ihn nimmt (as-specified für Drehmoment oder Vorspannkraft, flange-bolt-stress für eine Schraubenspannung).',
  },
  'friction-from-table': {
    says: 'Die Reibung stammt aus einer Tabelle ({source}), nicht aus einer Prüfung dieses Loses.',
    remedy: 'Eine Prüfung vorziehen: Tabellen für dieselben Worte weichen um die Hälfte ab.',
  },
  'bolt-too-short': {
    says: 'Die Schraubenlänge {length} reicht nicht: {thickness} Klemmlänge und eine Mutter von {nut} brauchen mindestens {needed}.',
    remedy: 'Längere Schraube nehmen, oder Länge oder Klemmlänge berichtigen (Σt: Bleche, Futter und Scheiben).',
  },
  'bolt-below-clamp': {
    says: 'Die Schraubenlänge {length} ist kleiner als die Klemmlänge {thickness}.',
    remedy: 'Längere Schraube nehmen, oder Länge oder Klemmlänge berichtigen (Σt: Bleche, Futter und Scheiben).',
  },
  'clamp-below-thread': {
    says: 'Die Schraubenlänge {length} lässt zu wenig für Mutter und einen Gewindegang Überstand bei {thickness} Klemmlänge.',
    remedy: 'Länge und Klemmlänge prüfen.',
  },
  'qualification-expired': {
    says: 'Die Qualifikation von {person} lief am {until} ab.',
    remedy: 'Erneuern, oder jemand Qualifiziertes macht die Arbeit.',
  },
} satisfies NoticeTexts<'joint'>;
