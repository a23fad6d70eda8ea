import type { NoticeTexts } from '../notice-texts.ts';

export const serverTexts = {
  'not-signed-in': {
    says: 'Nicht angemeldet, oder dieses Gerät ist keinem Auftrag beigetreten.',
    remedy: 'Anmelden, oder das Gerät neu beitreten lassen.',
  },
  'not-allowed': { says: 'Diese Rolle darf das nicht.', remedy: 'Den Planer fragen.' },
  'not-found': { says: 'Hier ist nichts freigegeben.', remedy: 'Die Adresse prüfen; den Planer fragen, ob man zum Auftrag gehört.' },
  'sign-in-failed': { says: 'Name und Passwort passen nicht.', remedy: 'Neu eintippen; der Planer kann ein neues Konto anlegen.' },
  'passkey-not-taken': {
    says: 'Der Passkey wurde nicht angenommen: Die Antwort kam zu spät, oder er gehört nicht zu dieser Adresse.',
    remedy:
      'Neu beginnen. Die Adresse öffnen, unter der auch die anderen diesen Server erreichen; eine Adresse aus Zahlen kann keine Passkeys haben.',
  },
  'passkey-not-known': {
    says: 'Dieser Passkey ist hier nicht bekannt.',
    remedy: 'Mit Name und Passwort anmelden, dann in den Einstellungen einen Passkey hinzufügen.',
  },
  'code-not-valid': {
    says: 'Der Code ist falsch, verbraucht oder zu alt.',
    remedy: 'Den Planer um einen neuen bitten: Er gilt zehn Minuten und für ein Gerät.',
  },
  'name-taken': { says: 'Ein Konto {name} gibt es schon.', remedy: 'Einen anderen Namen nehmen.' },
  'last-planner': { says: 'Das ist das letzte Konto eines Planers.', remedy: 'Zuerst einen anderen Planer anlegen.' },
  'question-malformed': {
    says: 'Das Feld „{field}“ fehlt oder ist nicht wie beschrieben.',
    remedy: 'Fragen, wie /api/v1/openapi.json es beschreibt.',
  },
  'body-not-json': { says: 'Der Inhalt ist kein JSON in UTF-8.', remedy: 'Fragen, wie /api/v1/openapi.json es beschreibt.' },
  'body-too-large': { says: 'Der Inhalt ist größer als {limit} Bytes.', remedy: 'In kleineren Stücken senden.' },
  'body-cut-short': { says: 'Der Inhalt endete zu früh.', remedy: 'Noch einmal senden.' },
  'hash-of-other-bytes': {
    says: 'Die Bytes haben nicht den Hash {hash}.',
    remedy: 'Die Datei noch einmal senden; nichts davon wurde behalten.',
  },
  'asked-too-often': { says: 'Zu oft gefragt.', remedy: '{seconds} s warten.' },
  'from-another-site': {
    says: 'Die Frage kam von einer Seite einer anderen Adresse.',
    remedy: 'Die Adresse dieses Servers selbst öffnen.',
  },
  'store-not-reachable': {
    says: 'Die Bücher können gerade weder geschrieben noch gelesen werden.',
    remedy: 'Nichts ist verloren: Geräte behalten, was nicht bestätigt wurde. Platte oder Datenbank ansehen; noch einmal versuchen.',
  },
  'server-defect': { says: 'Der Server hat bei Anfrage {request} versagt.', remedy: 'Mit dieser Nummer melden; nichts wurde bestätigt.' },
  'report-too-long': {
    says: 'Das Protokoll hat {size} Einträge; bis {most} wird hier ein Bericht erstellt.',
    remedy: 'Neben dem Server erstellen: clampwright report AUFTRAG DATEI.pdf.',
  },
  'log-smaller-than-asked': { says: 'Das Protokoll hat {size} Einträge.', remedy: 'Innerhalb davon fragen.' },
} satisfies NoticeTexts<'server'>;
