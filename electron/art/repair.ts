// Mending a damaged PDF in memory, for a second try at reading it. The file on the disk is never touched.
import { createRequire } from 'node:module';
import createQpdf from '@neslinesli93/qpdf-wasm';

const require = createRequire(import.meta.url);

/** What the mending program returns when it wrote a file, without or with warnings. */
const WRITTEN: ReadonlySet<number> = new Set([0, 3]);

/**
 * The file written anew, without encryption and object streams and with the drawing of each page in one piece, or
 * `undefined` where that does not succeed. Pictures, fonts and colours are handed on as they are packed.
 *
 * For a worker only: it may take long and much memory on a file made to do harm, talks to the standard streams of its
 * thread, and sets its exit code.
 */
export async function repair(bytes: Uint8Array, password: string): Promise<Uint8Array | undefined> {
  const qpdf = await createQpdf({
    locateFile: () => require.resolve('@neslinesli93/qpdf-wasm/dist/qpdf.wasm'),
  });
  // The package's declarations leave out that files can be written.
  const files = qpdf.FS as typeof qpdf.FS & { writeFile: (path: string, bytes: Uint8Array) => void };
  files.writeFile('/art.pdf', bytes);
  const outcome = qpdf.callMain([
    `--password=${password}`,
    '--decrypt',
    '--object-streams=disable',
    '--coalesce-contents',
    '--stream-data=preserve',
    '/art.pdf',
    '/mended.pdf',
  ]);
  return WRITTEN.has(outcome) ? files.readFile('/mended.pdf') : undefined;
}
