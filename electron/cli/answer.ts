// How the command line answers: one JSON object or a few plain lines on standard output, progress on standard error.
import type { Fault } from '../../shared/fault/result.ts';

/** Writes the answer; `lines` is what a person reads when JSON was not asked for. */
export function answer(json: boolean, value: unknown, lines: readonly string[]): void {
  process.stdout.write(
    json ? `${JSON.stringify(value, undefined, 2)}\n` : lines.map((line) => `${line}\n`).join(''),
  );
}

/** Says what was refused and what to do, with whatever else is known, and makes the program end with 1. */
export function answerFault(json: boolean, fault: Fault, besides: object = {}): void {
  const { code, message, remedy } = fault;
  if (json) answer(true, { error: { code, message, remedy }, ...besides }, []);
  else progress(`${message}\n${remedy}`);
  process.exitCode = 1;
}

/** A line of progress, on standard error. */
export function progress(line: string): void {
  process.stderr.write(`${line}\n`);
}
