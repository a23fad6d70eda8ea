import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Organisation } from '@clampwright/papers/out';
import {
  BookDamaged,
  NamesNotOurs,
  NeedsTls,
  type ServingBooks,
  type ServingYard,
  serveBooks,
  serveYard,
  storeIsAway,
} from '@clampwright/server';
import { FolderTaken } from '@clampwright/store';
import { appOf } from './app-of.ts';
import { EXIT, refuse } from './exit.ts';
import { font } from './font.ts';
import { isFolder, jobFolder } from './job-folder.ts';
import { faultsText } from './plan-text.ts';
import { type DataOption, whereOf, whereText } from './where-data-lies.ts';

export interface ServeCommandOptions extends DataOption {
  readonly port: string;
  readonly host?: string;
  readonly cert?: string;
  readonly key?: string;
  readonly yardCa?: boolean;
  readonly name?: readonly string[];
  readonly trustPort: string;
  readonly quiet?: boolean;
  /** folder with organisation.yaml */
  readonly organisation?: string;
}

/** `clampwright serve`: the bolting log of a yard over HTTP, until it is interrupted. */
export async function serveCommand(options: ServeCommandOptions): Promise<number> {
  const where = whereOf(options);
  const wrong = optionsFault(options);
  if (wrong !== undefined) return refuse(wrong);
  try {
    const serving = await begin(options, where);
    process.stdout.write(
      `The books in ${whereText(where)} are at ${'trust' in serving ? serving.addresses[0] : serving.url} (Ctrl-C ends)\n`,
    );
    if ('trust' in serving) process.stdout.write(trustText(serving));
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
    const why = refusalOf(error, whereText(where));
    if (why === undefined) throw error;
    return refuse(why);
  }
}

function optionsFault({ cert, key, yardCa, name, organisation }: ServeCommandOptions): string | undefined {
  if (organisation !== undefined && !existsSync(join(organisation, 'organisation.yaml')))
    return `There is no organisation.yaml in ${organisation}.`;
  const missing = [cert, key].filter((path) => path !== undefined && !existsSync(path));
  if (missing.length > 0) return `There is no file ${missing.join(', ')}.`;
  if ((cert === undefined) !== (key === undefined)) return '--cert and --key belong together.';
  if (yardCa && cert !== undefined) return '--yard-ca makes the certificate itself: leave --cert and --key out.';
  if (name && !yardCa) return '--name belongs to --yard-ca.';
  return undefined;
}

/** Name, address and mark for the reports it hands out, from the folder that was named or from the data folder. */
async function organisationOf({ organisation, data }: ServeCommandOptions): Promise<{ readonly organisation?: Organisation }> {
  const folder = organisation ?? data;
  if (!isFolder(folder)) return {};
  const { readOrganisation } = await import('@clampwright/papers/out');
  const { organisation: told, notices } = readOrganisation(jobFolder(folder));
  if (notices.length > 0) process.stderr.write(`${faultsText(notices, 'metric')}\n`);
  return told ? { organisation: told } : {};
}

async function begin(options: ServeCommandOptions, where: ReturnType<typeof whereOf>): Promise<ServingBooks | ServingYard> {
  const { cert, key, host, name = [] } = options;
  const pages = appOf();
  const common = {
    where,
    port: Number(options.port),
    ...(pages ? { pages } : {}),
    ...(await organisationOf(options)),
    ...(host === undefined ? {} : { host }),
    ...(options.quiet ? {} : { log: (line: unknown) => void process.stderr.write(`${JSON.stringify(line)}\n`) }),
  };
  if (options.yardCa)
    return serveYard({
      ...common,
      authority: join(options.data, 'yard-authority'),
      names: name.map((one) => one.toLowerCase()),
      trustPort: Number(options.trustPort),
      font: font(),
    });
  return serveBooks({
    ...common,
    ...(cert === undefined || key === undefined ? {} : { tls: { cert: readFileSync(cert, 'utf8'), key: readFileSync(key, 'utf8') } }),
  });
}

const trustText = ({ addresses, trust, fingerprint }: ServingYard): string =>
  [
    `Phones reach it at   ${addresses.join('\n                     ')}`,
    `First, once a phone: ${trust.join('\n                     ')}`,
    `There they compare this fingerprint: ${fingerprint}\n`,
  ].join('\n');

function refusalOf(error: unknown, where: string): string | undefined {
  const { message } = error as Error;
  if (error instanceof NeedsTls) return `${message}: give --cert and --key, or --yard-ca.`;
  if (error instanceof NamesNotOurs)
    return `${message}: it was made without. Leave the name out, or move the folder away: a new authority is made, which every phone has to trust anew.`;
  if (error instanceof FolderTaken) return `${message}.`;
  if (error instanceof BookDamaged)
    return `${message}. Nothing was started. Look at the folder with "clampwright audit", or restore a backup.`;
  if (storeIsAway(error)) return `The books in ${where} cannot be written: ${message}.`;
  return undefined;
}
