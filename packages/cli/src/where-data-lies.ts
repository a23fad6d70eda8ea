import type { Where } from '@clampwright/store';

export interface DataOption {
  readonly data: string;
}

/** PostgreSQL where DATABASE_URL says so, else a folder. */
export const whereOf = ({ data }: DataOption): Where => (process.env.DATABASE_URL ? { url: process.env.DATABASE_URL } : { folder: data });
export const whereText = (where: Where): string => ('folder' in where ? where.folder : new URL(where.url).host);
