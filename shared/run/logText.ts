// The log of a job's runs as text: one entry on each line. A line counts only when it is whole.
import { z } from 'zod';
import { entrySchema } from './entrySchema.ts';
import { nameOfEvent, type RunLogEntry } from './events.ts';
import { addEntry, NO_RUNS, type RunBook } from './run.ts';

/** What a log says. */
export interface RunLog {
  readonly book: RunBook;
  /** Lines that do not count and why, in words. */
  readonly notices: readonly string[];
}

/** The entry as a line of the log, its end included. */
export function writeEntry(entry: RunLogEntry): string {
  return `${JSON.stringify(entry)}\n`;
}

/**
 * The runs that a log tells of. What cannot be read or cannot have happened is passed over and said. A last line
 * without its end was cut short while it was written, so whoever wrote it was never told that it counts.
 */
export function readLog(text: string): RunLog {
  const lines = text.split('\n');
  const torn = lines.pop() ?? '';
  const notices: string[] = [];
  let book = NO_RUNS;
  for (const [index, line] of lines.entries()) {
    const entry = readLine(line);
    if (entry === undefined) {
      notices.push(
        `Line ${index + 1} of the log cannot be read and does not count. Look whether a count is missing.`,
      );
      continue;
    }
    const after = addEntry(book, entry);
    if (after.ok) book = after.value;
    else {
      const name = nameOfEvent(entry.event);
      notices.push(`Line ${index + 1} of the log (${name}) does not count. ${after.fault.message}`);
    }
  }
  if (torn !== '') {
    notices.push(
      'The last entry of the log was cut short, so it does not count. Look at the last count, and count again if it is missing.',
    );
  }
  return { book, notices };
}

function readLine(line: string): RunLogEntry | undefined {
  try {
    const read = z.safeParse(entrySchema, JSON.parse(line));
    return read.success ? read.data : undefined;
  } catch {
    return undefined;
  }
}
