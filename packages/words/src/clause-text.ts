import type { Language } from './language.ts';

/** What stands in citations beside numbers and signs; a clause that says more is left as its standard words it. */
const PHRASES = {
  de: {
    'combined stress while tightening reaches': 'Vergleichsspannung beim Anziehen erreicht',
    'assembly bolt stress': 'Montagespannung der Schraube',
    'suitability for preloading': 'Eignung zum Vorspannen',
    'legacy pattern': 'altes Muster',
    'guide values': 'Richtwerte',
    'proof loads of nuts': 'Prüfkräfte der Muttern',
    'replace it with what the crew’s log shows': 'durch das ersetzen, was die Aufzeichnung der Kolonne zeigt',
    Tables: 'Tabellen',
    Table: 'Tabelle',
    section: 'Abschnitt',
    annex: 'Anhang',
    appendix: 'Anhang',
    eq: 'Gl',
    lot: 'Los',
    above: 'über',
    with: 'mit',
    and: 'und',
  },
  es: {
    'combined stress while tightening reaches': 'la tensión combinada al apretar alcanza',
    'assembly bolt stress': 'tensión de montaje del tornillo',
    'suitability for preloading': 'aptitud para la precarga',
    'legacy pattern': 'patrón antiguo',
    'guide values': 'valores orientativos',
    'proof loads of nuts': 'cargas de prueba de tuercas',
    'replace it with what the crew’s log shows': 'sustituirlo por lo que muestre el registro de la cuadrilla',
    Tables: 'tablas',
    Table: 'tabla',
    section: 'apartado',
    annex: 'anexo',
    appendix: 'apéndice',
    eq: 'ec',
    lot: 'lote',
    above: 'por encima de',
    with: 'con',
    and: 'y',
  },
  pl: {
    'combined stress while tightening reaches': 'naprężenie zastępcze przy dokręcaniu osiąga',
    'assembly bolt stress': 'naprężenie montażowe śruby',
    'suitability for preloading': 'przydatność do sprężania',
    'legacy pattern': 'dawny schemat',
    'guide values': 'wartości orientacyjne',
    'proof loads of nuts': 'obciążenia próbne nakrętek',
    'replace it with what the crew’s log shows': 'zastąpić tym, co pokazuje zapis ekipy',
    Tables: 'tablice',
    Table: 'tablica',
    section: 'rozdział',
    annex: 'załącznik',
    appendix: 'dodatek',
    eq: 'wzór',
    lot: 'partia',
    above: 'powyżej',
    with: 'przy',
    and: 'i',
  },
  pt: {
    'combined stress while tightening reaches': 'a tensão combinada ao apertar atinge',
    'assembly bolt stress': 'tensão de montagem do parafuso',
    'suitability for preloading': 'aptidão para pré-esforço',
    'legacy pattern': 'padrão antigo',
    'guide values': 'valores indicativos',
    'proof loads of nuts': 'cargas de prova de porcas',
    'replace it with what the crew’s log shows': 'substituir pelo que o registo da equipa mostra',
    Tables: 'tabelas',
    Table: 'tabela',
    section: 'secção',
    annex: 'anexo',
    appendix: 'apêndice',
    eq: 'eq',
    lot: 'lote',
    above: 'acima de',
    with: 'com',
    and: 'e',
  },
} as const;

type Phrase = keyof (typeof PHRASES)['de'];
const ANY = new RegExp(`(?<![\\p{L}_])(?:${Object.keys(PHRASES.de).join('|')})(?![\\p{L}_])`, 'giu');
const NAMES = new Map(Object.keys(PHRASES.de).map((phrase) => [phrase.toLowerCase(), phrase as Phrase]));

/** Where in a standard a figure stands, in the reader's language: `Table 2 and section 11`. */
export const clauseText = (clause: string, language: Language): string =>
  language === 'en' ? clause : clause.replace(ANY, (phrase) => PHRASES[language][NAMES.get(phrase.toLowerCase())!]);
