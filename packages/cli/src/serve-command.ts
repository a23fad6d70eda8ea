import { existsSync, readFileSync } from 'node:fs';
import { BookDamaged, NeedsTls, serveBooks, storeIsAway } from '@clampwright/server';
import { FolderTaken } from '@clampwright/store';
import { EXIT } from './exit.ts';
import { type DataOption, whereOf, whereText } from './where-data-lies.ts';

export interface ServeCommandOptions extends DataOption {
  readonly port: string;
  readonly host: string;
  readonly cert?: string;
  readonly key?: string;
  readonly quiet?: boolean;
}

/** `clampwright serve`: the bolting log of a yard over HTTP, until it is interrupted. */
export async function serveCommand(options: ServeCommandOptions): Promise<number> {
  const { cert, key, host } = options;
  const missing = [cert, key].filter((path) => path !== undefined && !existsSync(path));
  if (missing.length > 0 || (cert === undefined) !== (key === undefined)) {
    process.stderr.write(missing.length > 0 ? `There is no file ${missing.join(', ')}.\n` : '--cert and --key belong together.\n');
    return EXIT.unusable;
  }
  const where = whereOf(options);
  try {
    const serving = await serveBooks({
      where,
      port: Number(options.port),
      host,
      ...(cert === undefined || key === undefined ? {} : { tls: { cert: readFileSync(cert, 'utf8'), key: readFileSync(key, 'utf8') } }),
      ...(options.quiet ? {} : { log: (line) => process.stderr.write(`${JSON.stringify(line)}\n`) }),
    });
    process.stdout.write(`The books in ${whereText(where)} are at ${serving.url} (Ctrl-C ends)\n`);
    if (serving.firstPassword !== undefined)
      process.stdout.write(
        `First start: sign in as planner with the password ${serving.firstPassword} and change it. It is not shown again.\n`,
      );
    await new Promise<void>((resolve) => {
      for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => resolve());
    });
    await serving.close();
    return EXIT.fine;
  } catch (error) {
    if (error instanceof NeedsTls) process.stderr.write(`${error.message}: give --cert and --key.\n`);
    else if (error instanceof FolderTaken) process.stderr.write(`${error.message}.\n`);
    else if (error instanceof BookDamaged)
      process.stderr.write(`${error.message}. Nothing was started. Look at the folder with "clampwright audit", or restore a backup.\n`);
    else if (storeIsAway(error)) process.stderr.write(`The books in ${whereText(where)} cannot be written: ${(error as Error).message}.\n`);
    else throw error;
    return EXIT.unusable;
  }
}
