import { CONTRACT, type Endpoint, isSchema, type Medium } from '@clampwright/sync';
import { type $ZodType, toJSONSchema } from 'zod/v4/core';
import { ACCESS } from './access-table.ts';

const MEDIA: Readonly<Record<Exclude<Medium, 'none'>, string>> = {
  bytes: 'application/octet-stream',
  lines: 'application/x-ndjson',
  events: 'text/event-stream',
  text: 'text/plain',
};
const BINARY = { type: 'string', contentEncoding: 'binary' };
const schemaOf = (schema: unknown) => {
  const { $schema: _, ...rest } = toJSONSchema(schema as $ZodType, { target: 'draft-2020-12', io: 'input' });
  return rest;
};

const REFUSAL = {
  description: 'Refused: everything that keeps it from being done, at once.',
  content: { 'application/json': { schema: { $ref: '#/components/schemas/Refusal' } } },
};

/** The contract as an OpenAPI 3.1 document: made from the same data that the server answers by. */
export function openApi(): Record<string, unknown> {
  const paths: Record<string, Record<string, unknown>> = {};
  for (const [name, endpoint] of Object.entries(CONTRACT) as [keyof typeof CONTRACT, Endpoint][]) {
    const path = `/api/v1${endpoint.path}`;
    paths[path] = { ...paths[path], [endpoint.method.toLowerCase()]: operation(name, endpoint) };
  }
  return {
    openapi: '3.1.0',
    info: {
      title: 'Clampwright',
      version: '1',
      description: 'The bolting log of a yard. Roles that may ask are named with each operation (x-roles).',
    },
    servers: [{ url: '/' }],
    paths,
    components: {
      schemas: {
        Refusal: {
          type: 'object',
          required: ['notices'],
          properties: {
            notices: {
              type: 'array',
              minItems: 1,
              items: { type: 'object', required: ['code', 'params'], properties: { code: { type: 'string' }, params: { type: 'object' } } },
            },
          },
        },
      },
      securitySchemes: {
        session: { type: 'apiKey', in: 'cookie', name: 'clampwright_session' },
        device: { type: 'http', scheme: 'bearer' },
      },
    },
  };
}

function operation(name: keyof typeof CONTRACT, endpoint: Endpoint): Record<string, unknown> {
  const who = ACCESS[name];
  const open = who.includes('anyone');
  const security = [...(who.includes('device') ? [{ device: [] }] : []), ...(who.some((one) => one !== 'device') ? [{ session: [] }] : [])];
  return {
    operationId: name,
    summary: endpoint.summary,
    'x-roles': who,
    security: open ? [] : security,
    parameters: [
      ...Object.entries(endpoint.params ?? {}).map(([key, schema]) => ({
        name: key,
        in: 'path',
        required: true,
        schema: schemaOf(schema),
      })),
      ...Object.entries(endpoint.query ?? {}).map(([key, schema]) => ({
        name: key,
        in: 'query',
        required: true,
        schema: schemaOf(schema),
      })),
    ],
    ...(endpoint.body ? { requestBody: { required: true, content: contentOf(endpoint.body) } } : {}),
    responses: {
      [endpoint.status]: {
        description: endpoint.answer === 'none' ? 'Done.' : 'The answer.',
        ...(endpoint.answer === 'none' ? {} : { content: contentOf(endpoint.answer) }),
      },
      default: REFUSAL,
    },
  };
}

function contentOf(one: NonNullable<Endpoint['body']> | Endpoint['answer']): Record<string, unknown> {
  if (typeof one === 'string') return { [MEDIA[one as Exclude<Medium, 'none'>]]: { schema: one === 'text' ? { type: 'string' } : BINARY } };
  return isSchema(one) ? { 'application/json': { schema: schemaOf(one) } } : { [one.bytes]: { schema: BINARY } };
}
