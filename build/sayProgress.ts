// Says how far a fetch is: on a terminal in one line that changes, elsewhere in a new line for each quarter.
import type { Progress } from './fetchElectron.ts';

const BYTES_OF_A_MEGABYTE = 1_000_000;

/** Where it is said: standard output, or what stands in its place. */
type Out = Pick<NodeJS.WriteStream, 'isTTY' | 'write'>;

/** Gives what is to be told of each step. `what` is said before the count. */
export function sayProgress(what: string, out: Out = process.stdout): (at: Progress) => void {
  let said: string | number = '';
  return ({ transferred, total }) => {
    const of = total === null ? '' : ` of ${megabytes(total)}`;
    const line = `${what}: ${megabytes(transferred)}${of} MB`;
    const step = out.isTTY || total === null ? line : Math.floor((transferred / total) * 4);
    if (step === said) return;
    said = step;
    if (out.isTTY) out.write(`\r${line}${transferred === total ? '\n' : ''}`);
    else out.write(`${line}\n`);
  };
}

const megabytes = (bytes: number) => (bytes / BYTES_OF_A_MEGABYTE).toFixed(0);
