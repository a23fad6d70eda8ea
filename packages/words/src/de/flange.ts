import type { NoticeTexts } from '../notice-texts.ts';

export const flangeTexts = {
  'flange-unknown': {
    says: '{standard} führt keinen Flansch {size} {rating}.',
    remedy: 'Größe und Druckstufe am Flanschrand prüfen; oder Schrauben, Lochkreis und Loch von Hand eintragen.',
  },
  'gasket-unknown': {
    says: 'Für die Dichtung „{gasket}“ sind keine Werte bekannt.',
    remedy: 'Die Werte des Dichtungsherstellers mit ihrer Quelle eintragen.',
  },
  'assembly-stress-limited': {
    says: 'Die Dichtung verlangt eine Schraubenspannung von {wanted}; {by, select, greatest {die größte Schraubenspannung begrenzt sie auf} least {die kleinste Schraubenspannung hebt sie auf} other {der Flansch begrenzt sie auf}} {selected}.',
    remedy: 'Vor dem Weitermachen die Nachweise von Dichtung und Flansch bei dieser Spannung lesen.',
  },
  'gasket-not-seated': {
    says: 'Bei einer Schraubenspannung von {stress} sitzt die Dichtung nicht; sie braucht {limit}.',
    remedy: 'Der Planungsingenieur wählt eine andere Dichtung, stärkere Schrauben oder eine schmalere Dichtfläche.',
  },
  'gasket-unloads-in-service': {
    says: 'Bei einer Schraubenspannung von {stress} bleibt im Betrieb zu wenig auf der Dichtung; sie braucht {limit}.',
    remedy: 'Der Planungsingenieur wählt eine andere Dichtung oder stärkere Schrauben, oder sieht Druck und Relaxation noch einmal an.',
  },
  'gasket-crushed': {
    says: 'Eine Schraubenspannung von {stress} zerdrückt die Dichtung; sie erträgt {limit}.',
    remedy: 'Die Schraubenspannung senken, oder der Planungsingenieur wählt eine Dichtung, die mehr erträgt.',
  },
  'flange-rotates-too-far': {
    says: 'Bei einer Schraubenspannung von {stress} verdrehen sich die Flansche mehr, als die Dichtung erträgt; die Grenze ist {limit}.',
    remedy: 'Die Schraubenspannung senken, oder der Planungsingenieur sieht Flansch und Dichtung noch einmal an.',
  },
} satisfies NoticeTexts<'flange'>;
