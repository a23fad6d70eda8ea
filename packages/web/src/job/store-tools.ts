import type { ToolDraft } from '@clampwright/record';
import type { Book } from './book.ts';

/** A tool as all books of this device tell of it. */
export interface StoreTool {
  readonly serial: string;
  readonly name: string;
  /** as the yard's book has it, or the job's where the yard does not know the tool */
  readonly tool: ToolDraft;
  readonly ofYard: boolean;
  readonly due: string | undefined;
  /** every check, whatever book it was told in, in the order of time */
  readonly checks: ToolDraft['checks'];
  readonly cutOuts: ToolDraft['cutOuts'];
  readonly tightened: number;
}

/** Tools by serial number: the yard's own first, and what jobs tell of them besides. */
export function storeTools(yard: Book | undefined, jobs: readonly Book[]): StoreTool[] {
  const books = [...(yard ? [yard] : []), ...jobs];
  const serials = [...new Set(books.flatMap(({ fold }) => fold.ids('tool')))].sort();
  return serials.map((serial) => {
    const told = books.filter(({ fold }) => fold.ids('tool').includes(serial)).map(({ fold }) => fold.state('tool', serial));
    const ofYard = yard?.fold.ids('tool').includes(serial) ?? false;
    const tool = told[0]!;
    const inOrder = <T extends { readonly mention: { readonly at: string } }>(all: readonly T[]) =>
      all.toSorted((a, b) => a.mention.at.localeCompare(b.mention.at));
    return {
      serial,
      name: told.find(({ name }) => name !== undefined)?.name ?? '',
      tool,
      ofYard,
      due: tool.due ?? told.find(({ due }) => due !== undefined)?.due,
      checks: inOrder(told.flatMap(({ checks }) => checks)),
      cutOuts: inOrder(told.flatMap(({ cutOuts }) => cutOuts)),
      tightened: told.reduce((sum, one) => sum + one.tightened, 0),
    };
  });
}
