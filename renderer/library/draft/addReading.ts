// Adding a reading to a printer, once the reading by itself is in order.
import { readLibraryFields } from '../../../shared/library/readLibrary.ts';
import type { DraftReading, LibraryDraft } from './draft.ts';
import type { LibraryErrors } from './takeDraft.ts';
import { writtenLibraryOf } from './writtenOf.ts';

interface Added {
  /** The draft with the reading in it. */
  readonly draft: LibraryDraft;
  /** What is wrong with the reading, by the names of its own fields; it is to be added only where nothing is. */
  readonly wrongs: LibraryErrors;
}

/** Adds a reading to the printer with this key, in the order of their dates. */
export function addReading(draft: LibraryDraft, printer: string, reading: DraftReading): Added {
  const at = draft.printers.findIndex(({ key }) => key === printer);
  const printers = draft.printers.map((entry) => {
    if (entry.key !== printer) return entry;
    const readings = [...entry.ink.readings, reading].toSorted((a, b) => a.date.localeCompare(b.date));
    return { ...entry, ink: { ...entry.ink, readings } };
  });
  const added = { ...draft, printers };
  const place = added.printers[at]?.ink.readings.indexOf(reading) ?? 0;
  const read = readLibraryFields(writtenLibraryOf(added));
  const own = `printers[${at}].ink.readings[${place}].`;
  const faults = read.ok ? [] : read.fault.filter(({ field }) => field.startsWith(own)).toReversed();
  return {
    draft: added,
    wrongs: Object.fromEntries(faults.map(({ field, says }) => [field.slice(own.length), says])),
  };
}
