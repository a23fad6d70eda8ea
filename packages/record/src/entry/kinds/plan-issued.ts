import { mentionOf } from '../../fold/mention.ts';
import { field, z } from '../field.ts';
import { BOOK, defineKind } from '../kind.ts';

const body = z.strictObject({
  number: field.label,
  /** of the plan's bytes, kept as an attachment and never computed again to be compared */
  plan: field.hash,
  engine: field.label,
  title: field.text,
  site: field.text,
  /** what this plan says of work begun under an earlier one */
  earlier: z.optional(z.enum(['continue', 'stop'])),
  tools: z.array(z.strictObject({ serial: field.label, name: field.label, due: field.date })),
});
export type PlanIssued = z.infer<typeof body>;

/** A plan was issued: frozen, numbered, hashed. The card of each joint follows in an entry of its own. */
export const planIssued = defineKind<PlanIssued>({
  version: 1,
  body,
  signOff: true,
  judgedBy: true,
  about: ({ tools }) => ({ book: BOOK, tool: tools.map(({ serial }) => serial) }),
  fold: {
    book: (book, told) => {
      const { number, plan, engine, title, site } = told.body;
      book.title = title;
      book.site = site;
      book.plans.push({ number, hash: plan, engine, mention: mentionOf(told) });
    },
    tool: (tool, { body: { tools } }) => {
      const copy = tools.find(({ serial }) => serial === tool.serial);
      if (copy) Object.assign(tool, { name: copy.name, due: copy.due });
    },
  },
});
