import { readFileSync } from 'node:fs';
import { type FilledForm, NoForm, planForms, workForms } from '@clampwright/papers/out';
import { EXIT, refuse } from './exit.ts';
import { isFile } from './job-folder.ts';
import { NO_KEY, onBook } from './on-book.ts';
import { type OutOption, plannedFor } from './planned-for.ts';
import type { DataOption } from './where-data-lies.ts';
import { NotOurs, writeOutput } from './write-output.ts';

interface FormOptions extends OutOption, DataOption {
  /** id of the job whose log fills the form */
  readonly book?: string;
}

/** `clampwright form TEMPLATE FOLDER`: the client's own workbook, filled once for each joint, from the plan or from the log. */
export async function formCommand(template: string, folder: string | undefined, options: FormOptions): Promise<number> {
  if (!isFile(template)) return refuse(`There is no file ${template}.`);
  const bytes = new Uint8Array(readFileSync(template));
  const { book, out } = options;
  try {
    if (book !== undefined) {
      const { reportSource } = await import('@clampwright/server');
      return await onBook(book, options, async (store) => {
        const source = await reportSource(store, book);
        if (!source) return refuse(NO_KEY);
        const files = filesOf(await workForms(bytes, source));
        writeOutput(out, files);
        process.stdout.write(
          `${Object.keys(files)
            .map((name) => `${out}/${name}`)
            .join('\n')}\n`,
        );
        return EXIT.fine;
      });
    }
    if (folder === undefined) return refuse('Give the job folder, or --book with the id of a job.');
    return await plannedFor(folder, { out }, 'forms', async (plan, { organisation }) => filesOf(planForms(bytes, plan, organisation)));
  } catch (error) {
    if (error instanceof NoForm) return refuse(`${template} is no form that can be filled: ${error.message}.`);
    if (error instanceof NotOurs) return refuse(`${error.message}. Move it, or choose another folder with --out.`);
    throw error;
  }
}

/** A file for each joint; what the template asks and nobody knows is said once. */
function filesOf(forms: readonly { readonly tag: string; readonly form: FilledForm }[]): Record<string, Uint8Array> {
  const [first] = forms;
  if (first && first.form.filled.length === 0)
    process.stderr.write(
      'No cell of the template has a name that is known: see docs/form-fields.md. The forms are copies of the template.\n',
    );
  for (const name of first?.form.unknown ?? [])
    process.stderr.write(`The template names ${name}, for which there is no value: left as it is.\n`);
  for (const name of first?.form.formulas ?? []) process.stderr.write(`The cell ${name} holds a formula: left as it is.\n`);
  return Object.fromEntries(forms.map(({ tag, form }) => [`${tag.replace(/[^\p{L}\p{N}._-]+/gu, '-')}.xlsx`, form.bytes]));
}
