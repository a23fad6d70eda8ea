import { serve } from '@clampwright/server';
import { EXIT, refuse } from './exit.ts';
import { font } from './font.ts';
import { isFolder } from './job-folder.ts';
import { planFolder } from './plan-command.ts';
import { faultsText } from './plan-text.ts';

/** `clampwright show FOLDER`: plans and serves the plan pages on this machine until it is interrupted. */
export async function showCommand(folder: string, options: { readonly port: string }): Promise<number> {
  if (!isFolder(folder)) {
    return refuse(`There is no folder ${folder}.`);
  }
  const { plan, faults } = planFolder(folder);
  if (faults.length > 0) process.stderr.write(`${faultsText(faults, plan?.job.units ?? 'metric')}\n`);
  if (!plan) return EXIT.unusable;
  const { url, close } = await serve(plan, { port: Number(options.port), font: font() });
  process.stdout.write(`The plan of “${plan.job.title}” is at ${url} (Ctrl-C ends)\n`);
  await new Promise<void>((resolve) => {
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => resolve());
  });
  await close();
  return EXIT.fine;
}
