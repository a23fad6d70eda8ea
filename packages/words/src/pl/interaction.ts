import type { NoticeTexts } from '../notice-texts.ts';

export const interactionTexts = {
  'compliance-size': {
    says: 'Macierzy podatności dla {bolts} śrub nie można użyć; można od 1 do {most}.',
    remedy: 'Podzielić połączenie.',
  },
  'compliance-not-square': {
    says: 'Macierz podatności nie ma {bolts} wierszy po {bolts} liczb.',
    remedy: 'Wpisać po jednym wierszu i jednej kolumnie na śrubę.',
  },
  'compliance-not-symmetric': {
    says: 'Macierz podatności nie jest symetryczna przy śrubach {first} i {second}.',
    remedy:
      'To, co śruba {first} robi ze śrubą {second}, musi być równe temu, co {second} robi z {first}; zmierzyć albo wpisać tę parę ponownie.',
  },
  'compliance-not-definite': {
    says: 'Macierz podatności nie jest macierzą połączenia sprężystego: nie jest dodatnio określona.',
    remedy: 'Szukać złego znaku, złej jednostki (mm/N) albo podatności śruby brakującej na przekątnej.',
  },
  'members-impossible': {
    says: 'Nie obliczono, jak śruby działają na siebie: wymiary opisują coś niemożliwego ({what}).',
    remedy: 'Poprawić je w members.yaml.',
  },
  'members-unknown': {
    says: 'Nie obliczono, jak śruby działają na siebie; nieznane: {what}.',
    remedy: 'Wpisać to na liście połączeń albo w members.yaml.',
  },
  'gasket-modulus-needed': {
    says: 'Nie obliczono, jak śruby działają na siebie: dla tej uszczelki nic nie jest typowe.',
    remedy: 'Wpisać jej grubość i moduł w members.yaml (dane producenta, EN 13555).',
  },
  'gasket-modulus-assumed': {
    says: 'Sztywność uszczelki jest tylko typowa dla jej rodzaju; od niej zależy, jak śruby działają na siebie.',
    remedy: 'Wpisać w members.yaml moduł producenta (EN 13555) dla tej uszczelki.',
  },
  'gasket-load-above': {
    says: 'Śruby razem naciskają na uszczelkę siłą {force}; jej największe naprężenie montażowe dopuszcza {greatest}.',
    remedy: 'Poprosić inżyniera o niższe naprężenie śrub albo inną uszczelkę; żadna nastawa przy tym naprężeniu jej nie oszczędzi.',
  },
  'gasket-load-below': {
    says: 'Śruby razem naciskają na uszczelkę siłą {force}; jej najmniejsze naprężenie montażowe wymaga {least}.',
    remedy: 'Poprosić inżyniera o wyższe naprężenie śrub albo inną uszczelkę; żadna nastawa przy tym naprężeniu jej nie osadzi.',
  },
  'uneven-by-custom': {
    says: 'Dokręcanie jednej śruby odciąża sąsiednie: po {rounds, plural, one {# przejściu} few {# przejściach} many {# przejściach} other {# przejścia}} siły różnią się jeszcze o {spread}.',
    remedy:
      'Obchodzić w koło, aż żadna nakrętka się nie ruszy: liczyć się z jeszcze {more, plural, one {# przejściem} few {# przejściami} many {# przejściami} other {# przejścia}}, zanim każda śruba będzie w granicach {wanted}.',
  },
  'uneven-still': {
    says: 'Po {rounds, plural, one {# przejściu} few {# przejściach} many {# przejściach} other {# przejścia}} śruba jest jeszcze o {worst} od celu; wymagane było {wanted}.',
    remedy: 'Zapytać inżyniera: inna uszczelka lub smar, kilka narzędzi naraz albo harmonogram z siłami powyżej celu.',
  },
  'peak-above-ceiling': {
    says: 'Podczas dokręcania innych śruba dochodzi do {peak}; powyżej {ceiling} może doznać szkody.',
    remedy: 'Zapytać inżyniera: więcej przejść z rosnącymi nastawami, kilka narzędzi naraz albo mniejsza siła sprężenia.',
  },
  'above-target-approval': {
    says: 'Ten harmonogram na pewien czas doprowadza śruby do {peak}; cel to {target}.',
    remedy: 'Inżynier zatwierdza harmonogram dla tego połączenia, a druga osoba potwierdza każdą zmianę nastawy.',
  },
  'above-target-refused': {
    says: 'Według {rule} żadna śruba nie może przekraczać swojego celu; nie wykorzystuje się największej siły śruby podanej dla tego połączenia.',
    remedy: 'Dokręcać z jedną nastawą na przejście.',
  },
  'several-settings-none': {
    says: 'Nie znaleziono harmonogramu z kilkoma nastawami poniżej {cap}.',
    remedy: 'Dokręcać z jedną nastawą na przejście albo poprosić inżyniera o inną największą siłę śruby.',
  },
} satisfies NoticeTexts<'interaction'>;
