import { type Notice, notice } from '@clampwright/core';
import { z } from 'zod';
import { load, type OpenFile } from '../read/open-file.ts';
import { readYaml } from '../read/yaml-file.ts';
import type { Organisation } from '../typeset/chrome.ts';

const schema = z.strictObject({ name: z.string().min(1).max(80), address: z.string().max(200).optional(), mark: z.string().optional() });

const PNG = [0x89, 0x50, 0x4e, 0x47];
const JPEG = [0xff, 0xd8, 0xff];
const begins = (bytes: Uint8Array, signature: readonly number[]) => signature.every((byte, at) => bytes[at] === byte);

/**
 * Whose papers these are: name, address (lines parted by `|`) and mark (PNG or JPEG) from `organisation.yaml`. A folder without one
 * gives papers without a head; a faulty one is told, and nothing of it is used.
 */
export function readOrganisation(open: OpenFile): { readonly organisation?: Organisation; readonly notices: readonly Notice[] } {
  const file = 'organisation.yaml';
  if (open(file) === 'missing') return { notices: [] };
  const bytes = load(open, file);
  const read = bytes.ok ? readYaml(bytes.value, file, schema) : bytes;
  if (!read.ok) return { notices: read.notices };
  const { name, address, mark } = read.value.value;
  const told = { name, ...(address === undefined ? {} : { address: address.split(/\s*\|\s*/).join('\n') }) };
  if (mark === undefined) return { organisation: told, notices: read.value.notices };
  const picture = load(open, mark, read.value.at(['mark']));
  if (!picture.ok) return { notices: picture.notices };
  if (!begins(picture.value, PNG) && !begins(picture.value, JPEG))
    return { notices: [notice('yaml-wrong-value', { wanted: 'a PNG or JPEG file' }, read.value.at(['mark']))] };
  return { organisation: { ...told, mark: picture.value }, notices: read.value.notices };
}
