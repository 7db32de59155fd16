// How the loopback server answers: JSON, or an answer of the window's own files.
import type { ServerResponse } from 'node:http';
import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import type { ReadableStream } from 'node:stream/web';
import { GUARDS } from '../serve/policy.ts';

/** Answers with JSON. */
export function answerJson(
  response: ServerResponse,
  status: number,
  value: unknown,
  headers: Readonly<Record<string, string>> = {},
): void {
  response.writeHead(status, {
    ...GUARDS,
    'content-type': 'application/json',
    'cache-control': 'no-store',
    ...headers,
  });
  response.end(JSON.stringify(value));
}

/** Passes on what the window loads. A page that is left in the middle is no fault. */
export async function answerWith(answer: Response, response: ServerResponse): Promise<void> {
  response.writeHead(answer.status, Object.fromEntries(answer.headers));
  if (answer.body === null) {
    response.end();
    return;
  }
  await pipeline(Readable.fromWeb(answer.body as ReadableStream<Uint8Array>), response).catch(
    () => undefined,
  );
}
