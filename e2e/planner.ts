import type { RunningServer } from '../torture/yard-on-disk.ts';
import { passwordOf } from './desk.ts';

/** Asks the server what only a planner may, as a script of the yard would: signed in with the password of the first start. */
export async function asPlanner(server: RunningServer): Promise<(method: string, path: string, body?: unknown) => Promise<Response>> {
  const json = { 'Content-Type': 'application/json' };
  const opened = await fetch(`${server.url}/api/v1/session`, {
    method: 'POST',
    headers: json,
    body: JSON.stringify({ name: 'planner', password: passwordOf(server.output()) }),
  });
  const cookie = opened.headers.get('set-cookie')!.split(';')[0]!;
  return (method, path, body) =>
    fetch(`${server.url}/api/v1${path}`, {
      method,
      headers: { ...json, cookie },
      ...(body === undefined ? {} : { body: JSON.stringify(body) }),
    });
}
