import type { NoticeTexts } from '../notice-texts.ts';

export const inputTexts = {
  'file-missing': { says: 'Die Datei {file} ist nicht da.', remedy: 'In den Auftragsordner legen oder ihren Namen berichtigen.' },
  'file-empty': { says: 'Die Datei {file} ist leer.', remedy: 'Mindestens die Überschriften und eine Zeile eintragen.' },
  'file-too-large': { says: 'Die Datei {file} ist größer als {limit}.', remedy: 'Den Auftrag auf mehrere Ordner aufteilen.' },
  'file-not-text': {
    says: 'Die Datei {file} ist keine Textdatei.',
    remedy: 'Aus der Tabellenkalkulation als XLSX oder CSV (UTF-8) speichern.',
  },
  'encoding-assumed': {
    says: 'Die Datei {file} ist nicht UTF-8; sie wurde als {encoding} gelesen.',
    remedy: 'Namen mit Akzenten und Umlauten prüfen, oder die Datei als UTF-8 speichern.',
  },
  'path-leaves-folder': {
    says: 'Der Pfad {path} führt aus dem Auftragsordner hinaus.',
    remedy: 'Die Datei in den Auftragsordner legen und von dort aus nennen.',
  },
  'csv-broken': {
    says: 'Die Tabelle kann von hier an nicht gelesen werden: {problem}.',
    remedy: 'In dieser Zeile nach einem offenen Anführungszeichen oder einem überzähligen Trennzeichen suchen.',
  },
  'heading-row-missing': {
    says: 'Keine Zeile mit Überschriften wurde erkannt.',
    remedy: 'Eine der ersten Zeilen muss die Spalten benennen, darunter: {wanted}.',
  },
  'column-missing': { says: 'Die Spalte „{wanted}“ fehlt.', remedy: 'Ergänzen, mit einer der Überschriften aus docs/columns.md.' },
  'column-twice': {
    says: 'Die Überschrift „{heading}“ bedeutet {meaning}, „{other}“ ebenso.',
    remedy: 'Eine von beiden behalten, oder sagen, welche es ist, an der Überschrift in der App oder mit --map "{heading}={meaning}".',
  },
  'column-unclear': {
    says: 'Die Überschrift „{heading}“ kann bedeuten: {candidates}.',
    remedy:
      'Einmal sagen, was sie bedeutet, an der Überschrift in der App oder mit --map "{heading}={example}", oder --map "{heading}=ignore". mapping.yaml merkt es sich.',
  },
  'column-asked': {
    says: 'Keine Überschrift bedeutet {wanted}; nicht verstanden wurden {candidates}.',
    remedy:
      'Ist es eine davon, einmal sagen, an der Überschrift in der App oder mit --map "{example}={wanted}". Sonst die Spalte ergänzen.',
  },
  'heading-map-unused': {
    says: '--map "{heading}={means}" passt auf keine Tabelle dieses Auftrags.',
    remedy: 'Die Überschrift schreiben, wie sie in der Datei steht, und eine Bedeutung aus docs/columns.md.',
  },
  'workbook-broken': {
    says: 'Die Arbeitsmappe kann nicht gelesen werden: {problem}.',
    remedy: 'In der Tabellenkalkulation öffnen und als XLSX speichern.',
  },
  'workbook-unsafe': {
    says: 'Die Arbeitsmappe wird abgelehnt: {problem}.',
    remedy:
      'Eine Verbindungsliste braucht nichts dergleichen. Fragen, woher die Datei kommt; die Werte in eine neue Arbeitsmappe kopieren.',
  },
  'workbook-old': {
    says: 'Die Arbeitsmappe ist mit einem Passwort gesperrt oder von der alten Art (XLS).',
    remedy: 'Als XLSX ohne Passwort oder als CSV speichern.',
  },
  'sheet-missing': { says: 'Die Arbeitsmappe hat kein Blatt „{sheet}“; sie hat {sheets}.', remedy: 'Den Namen hinter dem # berichtigen.' },
  'sheet-unclear': {
    says: 'Mehrere Blätter können gemeint sein ({wanted}): {sheets}.',
    remedy: 'Das richtige nennen, hinter einem #: {example}',
  },
  'rows-hidden': {
    says: '{rows, plural, one {Eine ausgeblendete Zeile wurde} other {# ausgeblendete Zeilen wurden}} mitgelesen.',
    remedy: 'Löschen, was nicht mehr gilt: Ausblenden nimmt keine Zeile aus der Liste.',
  },
  'cell-error': {
    says: 'Die Zelle zeigt einen Fehler statt eines Werts.',
    remedy: 'Die Formel in der Tabellenkalkulation richten oder den Wert eintragen.',
  },
  'bolt-list-uneven': {
    says: 'Die Zeilen der Verbindung {tag} geben nicht jeder Schraube eine eigene Nummer und einen eigenen Platz; ansehen: {bolts}.',
    remedy: 'Die Schrauben von 1 an ohne Lücken nummerieren, je eine Zeile, alle mit x und y oder keine.',
  },
  'column-ignored': {
    says: 'Die Spalte „{heading}“ wurde nicht verstanden und wird nicht benutzt.',
    remedy: 'Umbenennen, wenn sie zählt.',
  },
  'unit-unknown': {
    says: 'Die Einheit „{unit}“ ist keine von {wanted}.',
    remedy: 'Die Einheit in Klammern in die Überschrift oder hinter die Zahl schreiben.',
  },
  'unit-missing': {
    says: 'Die Zahl hat keine Einheit.',
    remedy: 'Eine von {wanted} in Klammern in die Überschrift oder hinter die Zahl schreiben.',
  },
  'cell-empty': { says: 'Diese Zelle ist leer.', remedy: 'Eintragen: {wanted}.' },
  'cell-formula': {
    says: 'Die Zelle enthält eine Formel, keinen Wert.',
    remedy: 'Den Wert an ihre Stelle setzen, oder das Blatt berechnen lassen und speichern; Formeln werden hier nie ausgeführt.',
  },
  'number-wanted': { says: 'Das ist keine Zahl.', remedy: 'Eintragen: {wanted}.' },
  'quantity-wanted': { says: 'Das ist keine Zahl.', remedy: 'Eine Zahl eintragen, in {units}.' },
  'number-outside': { says: 'Diese Zahl geht hier nicht.', remedy: 'Eine Zahl von {low} bis {high} eintragen.' },
  'whole-number-outside': { says: 'Diese Zahl geht hier nicht.', remedy: 'Eine ganze Zahl von {low} bis {high} eintragen.' },
  'number-ambiguous': {
    says: '„{read}“ lässt sich als Dezimalzahl lesen oder mit Tausendertrennzeichen.',
    remedy: 'Ohne Tausendertrennzeichen schreiben; in einer Arbeitsmappe als Zahl eintragen, nicht als Text.',
  },
  'number-absurd': {
    says: 'Die Zahl ist nicht glaubhaft.',
    remedy: 'Eintragen: {wanted}, über null und bis {largest}; die Einheit prüfen.',
  },
  'label-too-long': {
    says: 'Dieser Name ist länger als {most} Zeichen oder hat mehr als eine Zeile.',
    remedy: 'Kürzen: Das Protokoll führt Kennzeichen, Seriennummern und Lose mit bis zu {most} Zeichen.',
  },
  'word-unknown': { says: 'Dieses Wort ist hier nicht bekannt.', remedy: 'Eines eintragen von: {wanted}.' },
  'positions-unreadable': {
    says: 'Die Schrauben können nicht gelesen werden.',
    remedy: 'Eine Zahl schreiben (8) oder Positionen (1-4, 7, 9-12).',
  },
  'layout-unreadable': { says: 'Die Anordnung kann nicht gelesen werden.', remedy: '„ring“ schreiben, oder Zeilen × Spalten (2x4).' },
  'layout-contradicts-bolts': { says: 'Die Anordnung {layout} hat nicht {bolts} Schrauben.', remedy: 'Eines von beiden berichtigen.' },
  'joint-contradicts-itself': {
    says: 'Verbindung {tag} ist zweimal beschrieben: {field} ist „{first}“ in einer Zeile und „{second}“ in einer anderen.',
    remedy:
      'Zeilen einer Verbindung dürfen sich nur in dem unterscheiden, was zu einer Untergruppe gehört: Positionen, Größe, Güte, Länge, Los.',
  },
  'flange-contradicts': {
    says: '{flange} hat {field} {table}; die Liste sagt {given}.',
    remedy: 'Die Liste berichtigen, oder die Zelle leer lassen: Dann füllt sie die Tabelle der Norm.',
  },
  'flange-unreadable': {
    says: 'Der Flansch kann nicht gelesen werden.',
    remedy: 'Schreiben wie „B16.5 NPS 8 Class 300“ oder „EN 1092-1 DN80 PN16“.',
  },
  'friction-half-given': { says: 'Die Reibung ist nur halb angegeben.', remedy: 'Eintragen: {wanted}.' },
  'friction-implausible': {
    says: 'Kein Verbindungselement hat diesen Wert ({what}); es kommen {low} bis {high} vor.',
    remedy: 'Die Zahl mit dem Zeugnis vergleichen, und ob sie in der richtigen Spalte steht.',
  },
  'yaml-broken': {
    says: 'Die Datei kann nicht gelesen werden: {problem}.',
    remedy: 'Die Zeile mit dem Beispiel vergleichen, das „clampwright init“ schreibt.',
  },
  'yaml-unknown-key': {
    says: 'Das Wort „{key}“ ist hier nicht bekannt.',
    remedy: 'Mit dem Beispiel vergleichen, das „clampwright init“ schreibt.',
  },
  'yaml-wrong-value': { says: 'Dieser Wert kann nicht verwendet werden.', remedy: 'Verlangt: {wanted}.' },
  'date-unreadable': { says: 'Das ist kein Datum des Kalenders.', remedy: 'Jahr-Monat-Tag schreiben: 2026-11-25.' },
  'certificates-unclear': {
    says: 'Werkzeug {serial} hat zwei Kalibrierscheine vom {day}: {first} und {second}. Keiner wurde gewählt.',
    remedy: 'Den gültigen behalten, oder das Datum des anderen berichtigen.',
  },
  'certificate-missing': {
    says: 'Werkzeug {serial} hat keinen Kalibrierschein mit Einstelltabelle.',
    remedy: 'Kalibrierschein und Tabelle hier angeben, oder in der Datei der Kalibrierscheine aufführen.',
  },
  'certificate-of-no-tool': {
    says: 'Die Liste hat einen Kalibrierschein von {serial}; das ist kein Werkzeug dieses Auftrags.',
    remedy: 'Nichts, wenn das Werkzeug hier nicht benutzt wird; sonst die Seriennummern vergleichen.',
  },
  'record-joint-unknown': {
    says: 'Für eine Verbindung „{tag}“ wurde in diesem Auftrag keine Karte ausgegeben.',
    remedy: 'Verbindungen mit Karten: {joints}.',
  },
  'record-step-unknown': { says: 'Die Verbindung hat keinen Schritt „{step}“.', remedy: 'Ihre Schritte: {steps}.' },
  'record-bolt-unknown': { says: 'Die Verbindung hat keine Schraube {bolt}.', remedy: 'Ihre Schrauben sind 1 bis {bolts}.' },
  'records-known': {
    says: 'Die Datei {name} wurde in dieses Buch schon eingetragen, Byte für Byte.',
    remedy: 'Nur das Neue eintragen, als eigene Datei.',
  },
  'entered-lot-unknown': {
    says: 'Los {lot} ist in diesem Buch nicht erfasst, und die Datei sagt nicht, was seine Garnituren sind.',
    remedy: 'Größe, Güte und System hinter „designation“ schreiben, neben das Los.',
  },
  'entered-tool-unknown': {
    says: 'Werkzeug {tool} ist weder in diesem Buch erfasst noch in dem des Betriebs.',
    remedy: 'Die Seriennummer vergleichen, oder das Werkzeug zuerst erfassen: clampwright register.',
  },
  'serial-twice': {
    says: 'Die Seriennummer {serial} steht zweimal da.',
    remedy: 'Ein Werkzeug kommt einmal vor; seine Tabelle tauschen, nicht das Werkzeug.',
  },
  'lot-twice': { says: 'Das Los {lot} steht zweimal da.', remedy: 'Jedem Los einen eigenen Namen geben.' },
  'members-joint-unknown': {
    says: 'members.yaml spricht von Verbindung {joint}, die nicht in der Verbindungsliste steht oder ausgelassen wurde.',
    remedy: 'Das Schild schreiben wie in der Verbindungsliste.',
  },
  'members-twice': { says: 'Zwei Einträge sagen, was Verbindung {joint} klemmt.', remedy: 'Einen davon lassen.' },
  'members-no-flange': {
    says: 'Verbindung {joint} ist kein Normflansch mit Dichtung, und ihre Maße sind nicht angegeben.',
    remedy: 'Den Flansch in der Verbindungsliste und die Dichtung hier nennen, oder Ring, Bleche oder Matrix angeben.',
  },
  'row-broken': {
    says: 'Die Zeile hat {cells} Zellen; die Überschriften haben {wanted}.',
    remedy: 'Nach einem fehlenden oder überzähligen Trennzeichen suchen, oder einem Komma in einer Zahl.',
  },
} satisfies NoticeTexts<'input'>;
