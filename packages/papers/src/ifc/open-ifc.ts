import { type Notice, notice, type Outcome, refused } from '@clampwright/core';
import type { IfcAPI } from 'web-ifc';
import { type Model, modelOf } from './model.ts';
import { stepText } from './step-text.ts';

/** Larger models are refused. */
const LARGEST_MODEL = 256 * 1024 * 1024;
const LARGEST_MODEL_TEXT = '256 MiB';
/** Memory that the parser may take; beyond it the file goes through in pieces. */
const PARSER_MEMORY = 1024 * 1024 * 1024;

/** Where the parser's wasm file lies: in a browser the address its bundler gave it. In Node it finds the file itself. */
export interface ParserPlace {
  readonly wasm?: string;
}

let loaded: Promise<IfcAPI> | undefined;

async function parser({ wasm }: ParserPlace): Promise<IfcAPI> {
  loaded ??= import('web-ifc').then(async ({ IfcAPI, LogLevel }) => {
    const api = new IfcAPI();
    await api.Init(wasm === undefined ? undefined : () => wasm, true);
    api.SetLogLevel(LogLevel.LOG_LEVEL_OFF);
    return api;
  });
  return loaded;
}

const SCHEMAS = /^IFC(2X3|4|4X3)/;

/** Opens an IFC file (STEP text, ISO 10303-21; IFC 2x3, 4 and 4.3), lets `work` look at it, and closes it. */
export async function withIfc<T>(bytes: Uint8Array, file: string, place: ParserPlace, work: (model: Model) => T): Promise<Outcome<T>> {
  const refusal = refusalOf(bytes, file);
  if (refusal) return refused(refusal);
  const step = stepText(bytes);
  if (!('text' in step)) return refused(notice('model-text', { problem: step.problem }, { file, row: step.line }));
  const api = await parser(place);
  const id = opened(api, step.text);
  if (id === undefined) return refused(notice('model-broken', {}, { file }));
  try {
    return { ok: true, value: work(modelOf(api, id)) };
  } finally {
    api.CloseModel(id);
  }
}

/** The parser throws bare errors for a file that it cannot take: its own, and those of wasm, after which it is loaded anew. */
function opened(api: IfcAPI, bytes: Uint8Array): number | undefined {
  try {
    const id = api.OpenModel(bytes, { MEMORY_LIMIT: PARSER_MEMORY });
    return id < 0 ? undefined : id;
  } catch (error) {
    if (error instanceof WebAssembly.RuntimeError) loaded = undefined;
    return undefined;
  }
}

function refusalOf(bytes: Uint8Array, file: string): Notice | undefined {
  if (bytes.length > LARGEST_MODEL) return notice('file-too-large', { file, limit: LARGEST_MODEL_TEXT }, { file });
  const head = new TextDecoder('latin1').decode(bytes.subarray(0, 16_384));
  if (head.startsWith('PK')) return notice('model-packed', {}, { file });
  if (!head.trimStart().startsWith('ISO-10303-21')) return notice('model-not-step', {}, { file });
  const schema = /FILE_SCHEMA\s*\(\s*\(\s*'([^']*)'/i.exec(head)?.[1]?.toUpperCase() ?? '';
  return SCHEMAS.test(schema) ? undefined : notice('model-schema', { schema: schema === '' ? '–' : schema }, { file });
}
