// The body of a request, read no further than it may be long.
import type { IncomingMessage } from 'node:http';

/** More was sent than is taken. */
export class BodyTooLong extends Error {}

/** The bytes of the body as they come. Throws `BodyTooLong` as soon as there are more than `longest`. */
export async function* bodyOf(request: IncomingMessage, longest: number): AsyncGenerator<Uint8Array> {
  if (Number(request.headers['content-length'] ?? 0) > longest) throw new BodyTooLong();
  let length = 0;
  for await (const chunk of request) {
    length += (chunk as Buffer).length;
    if (length > longest) throw new BodyTooLong();
    yield chunk as Buffer;
  }
}

/** The body as JSON; `undefined` where it is none. */
export async function jsonOf(request: IncomingMessage, longest: number): Promise<unknown> {
  const chunks: Uint8Array[] = [];
  for await (const chunk of bodyOf(request, longest)) chunks.push(chunk);
  try {
    return JSON.parse(Buffer.concat(chunks).toString('utf8'));
  } catch {
    return undefined;
  }
}
