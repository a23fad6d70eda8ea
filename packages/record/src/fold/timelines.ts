import type { Drafts, Subject, Told } from '../entry/kind.ts';
import { kindOf } from '../entry/understand.ts';
import type { Look } from './look.ts';
import { compareEntries, placeOf } from './order.ts';
import { START } from './start.ts';

interface Line<S extends Subject> {
  readonly id: string;
  /** in the order of events, whatever the order of arrival */
  readonly told: Told[];
  draft: Drafts[S];
  /** how many of `told` are in the draft; what came late makes it begin again */
  folded: number;
  /** what it was judged by when it was folded */
  judgedAt: number;
}

/** Entries by what they are about, and the state they fold into: folded when asked for, and only what is new. */
export function openTimelines(ask: {
  readonly isStruck: (told: Told) => boolean;
  readonly look: Look;
  /** grows when something changes that entries are judged by */
  readonly judgement: () => number;
}) {
  const lines = Object.fromEntries(Object.keys(START).map((subject) => [subject, new Map()])) as {
    [S in Subject]: Map<string, Line<S>>;
  };

  const lineOf = <S extends Subject>(subject: S, id: string): Line<S> => {
    const known = lines[subject].get(id);
    if (known) return known;
    const line: Line<S> = { id, told: [], draft: START[subject](id), folded: 0, judgedAt: 0 };
    lines[subject].set(id, line);
    return line;
  };

  const beginAgain = (line: Line<Subject>) => {
    line.folded = -1;
  };

  return {
    add(subject: Subject, id: string, told: Told): void {
      const line = lineOf(subject, id) as Line<Subject>;
      const last = line.told.at(-1);
      if (last === undefined || compareEntries(last, told) < 0) {
        line.told.push(told);
        return;
      }
      const at = placeOf(line.told, told);
      line.told.splice(at, 0, told);
      if (at < line.folded) beginAgain(line);
    },

    /** The entries of a line are to be read again: one of them was corrected. */
    invalidate(subject: Subject, id: string): void {
      beginAgain(lineOf(subject, id) as Line<Subject>);
    },

    ids: (subject: Subject): string[] => [...lines[subject].keys()].sort(),

    state<S extends Subject>(subject: S, id: string): Drafts[S] {
      const line = lines[subject].get(id) as Line<S> | undefined;
      if (!line) return START[subject](id);
      const judgement = ask.judgement();
      if (line.folded < 0 || (subject === 'joint' && line.folded > 0 && line.judgedAt !== judgement)) {
        line.draft = START[subject](id);
        line.folded = 0;
      }
      line.judgedAt = judgement;
      for (; line.folded < line.told.length; line.folded += 1) {
        const told = line.told[line.folded]!;
        if (subject === 'joint') (line.draft as Drafts['joint']).history.push(told.hash);
        if (!ask.isStruck(told)) kindOf(told.entry.kind)?.fold[subject]?.(line.draft, told, ask.look);
      }
      return line.draft;
    },
  };
}
