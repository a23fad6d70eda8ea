import type { NoticeTexts } from '../notice-texts.ts';

export const serverTexts = {
  'not-signed-in': {
    says: 'Brak zalogowania albo to urządzenie nie jest dołączone.',
    remedy: 'Zalogować się albo dołączyć urządzenie na nowo.',
  },
  'not-allowed': { says: 'Ta rola tego nie robi.', remedy: 'Zapytać planistę.' },
  'not-found': { says: 'Nic tu nie jest udostępnione.', remedy: 'Sprawdzić adres; zapytać planistę, czy się należy do zlecenia.' },
  'sign-in-failed': { says: 'Nazwa i hasło nie pasują.', remedy: 'Wpisać je ponownie; planista może założyć nowe konto.' },
  'passkey-not-taken': {
    says: 'Klucza dostępu nie przyjęto: odpowiedź przyszła za późno albo nie należy on do tego adresu.',
    remedy:
      'Zacząć od nowa. Otworzyć adres, pod którym także inni docierają do tego serwera; adres z samych liczb nie może mieć kluczy dostępu.',
  },
  'passkey-not-known': {
    says: 'Ten klucz dostępu nie jest tu znany.',
    remedy: 'Zalogować się nazwą i hasłem, potem dodać klucz dostępu w ustawieniach.',
  },
  'code-not-valid': {
    says: 'Kod jest błędny, zużyty albo za stary.',
    remedy: 'Poprosić planistę o nowy: jest ważny dziesięć minut i dla jednego urządzenia.',
  },
  'name-taken': { says: 'Konto {name} już istnieje.', remedy: 'Wybrać inną nazwę.' },
  'last-planner': { says: 'To ostatnie konto planisty.', remedy: 'Najpierw założyć drugiego planistę.' },
  'question-malformed': {
    says: 'Pola „{field}” brakuje albo jest inne niż opisane.',
    remedy: 'Pytać tak, jak opisuje /api/v1/openapi.json.',
  },
  'body-not-json': { says: 'Treść nie jest JSON-em w UTF-8.', remedy: 'Pytać tak, jak opisuje /api/v1/openapi.json.' },
  'body-too-large': { says: 'Treść jest większa niż {limit} bajtów.', remedy: 'Wysłać w mniejszych częściach.' },
  'body-cut-short': { says: 'Treść urwała się za wcześnie.', remedy: 'Wysłać ponownie.' },
  'hash-of-other-bytes': { says: 'Bajty nie mają skrótu {hash}.', remedy: 'Wysłać plik ponownie; niczego z niego nie zachowano.' },
  'asked-too-often': { says: 'Za dużo zapytań.', remedy: 'Czekać {seconds} s.' },
  'from-another-site': { says: 'Zapytanie przyszło ze strony innej witryny.', remedy: 'Otworzyć adres samego tego serwera.' },
  'store-not-reachable': {
    says: 'Książek nie da się teraz zapisać ani odczytać.',
    remedy: 'Nic nie przepadło: urządzenia zachowują to, czego nie potwierdzono. Obejrzeć dysk albo bazę danych; spróbować ponownie.',
  },
  'server-defect': { says: 'Serwer zawiódł przy zapytaniu {request}.', remedy: 'Zgłosić z tym numerem; niczego nie potwierdzono.' },
  'report-too-long': {
    says: 'Dziennik ma {size} wpisów; raport powstaje tu do {most}.',
    remedy: 'Sporządzić go obok serwera: clampwright report ZLECENIE PLIK.pdf.',
  },
  'log-smaller-than-asked': { says: 'Dziennik ma wpisów: {size}.', remedy: 'Pytać w tych granicach.' },
} satisfies NoticeTexts<'server'>;
