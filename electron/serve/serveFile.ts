// A file as the answer to a request, whole or in part.
import { open } from 'node:fs/promises';
import { Readable } from 'node:stream';
import { readRange } from './range.ts';

/** Answers with a file or the asked part of it; 404 where it is not there, 416 for a part that it does not have. */
export async function serveFile(request: Request, path: string, type: string): Promise<Response> {
  const file = await open(path, 'r').catch(() => undefined);
  if (file === undefined) return new Response(null, { status: 404 });
  const found = await file.stat();
  if (!found.isFile()) {
    await file.close();
    return new Response(null, { status: 404 });
  }
  const range = readRange(request.headers.get('range'), found.size);
  const headers = { 'content-type': type, 'accept-ranges': 'bytes', 'cache-control': 'no-store' };
  if (range === 'unsatisfiable') {
    await file.close();
    return new Response(null, {
      status: 416,
      headers: { ...headers, 'content-range': `bytes */${found.size}` },
    });
  }
  const { from, to } = range ?? { from: 0, to: found.size - 1 };
  const partly = range === undefined ? {} : { 'content-range': `bytes ${from}-${to}/${found.size}` };
  const length = to - from + 1;
  const answer = {
    status: range === undefined ? 200 : 206,
    headers: { ...headers, ...partly, 'content-length': `${length}` },
  };
  if (length === 0) {
    await file.close();
    return new Response(null, answer);
  }
  const stream: unknown = Readable.toWeb(file.createReadStream({ start: from, end: to }));
  return new Response(stream as ConstructorParameters<typeof Response>[0], answer);
}
