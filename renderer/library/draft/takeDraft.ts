// Taking a draft as the library: what is in order is taken, what is not stays as it was and is told field by field.
import type { Library } from '../../../shared/library/library.ts';
import { readLibraryFields } from '../../../shared/library/readLibrary.ts';
import type { LibraryDraft } from './draft.ts';
import { libraryDraftOf } from './draftOf.ts';
import { measuresOnly } from './measuresOnly.ts';
import { writtenLibraryOf } from './writtenOf.ts';

/** What is wrong in each field, by the field's name in a written library. */
export type LibraryErrors = Readonly<Record<string, string>>;

/** A library, and the draft that it was read from. */
export interface KeptLibrary {
  readonly library: Library;
  readonly draft: LibraryDraft;
}

interface Taking {
  /** What is to be kept from now on. */
  readonly kept: KeptLibrary;
  /** The draft as it is shown: with what is wrong as it was typed. */
  readonly shown: LibraryDraft;
  readonly wrongs: LibraryErrors;
}

/** Takes the draft. A printer or paper with something wrong in it is kept as it was in `before`, the others as they are now. */
export function takeDraft(draft: LibraryDraft, before: KeptLibrary): Taking {
  const whole = keepDraft(draft);
  if (whole.ok) return { kept: whole.kept, shown: whole.kept.draft, wrongs: {} };
  const measures = keepDraft(measuresOnly(draft));
  const wrongs = { ...(measures.ok ? {} : measures.wrongs), ...whole.wrongs };
  return { kept: keepSound(draft, before), shown: draft, wrongs };
}

/** A reading tells what is wrong with the shape, else with the measures, else with entries that do not go together. */
const MAX_ROUNDS = 4;

/** Keeps what is in order of the draft, and the rest as it was before. */
function keepSound(draft: LibraryDraft, before: KeptLibrary): KeptLibrary {
  let mended = draft;
  for (let round = 0; round < MAX_ROUNDS; round += 1) {
    const read = keepDraft(mended);
    if (read.ok) return read.kept;
    mended = mend(mended, before.draft, read.wrongs);
  }
  return before;
}

type Keeping =
  | { readonly ok: true; readonly kept: KeptLibrary }
  | { readonly ok: false; readonly wrongs: LibraryErrors };

function keepDraft(draft: LibraryDraft): Keeping {
  const read = readLibraryFields(writtenLibraryOf(draft));
  if (!read.ok) {
    return {
      ok: false,
      wrongs: Object.fromEntries(read.fault.toReversed().map(({ field, says }) => [field, says])),
    };
  }
  return { ok: true, kept: { library: read.value, draft: libraryDraftOf(read.value, draft) } };
}

/** The draft with each part that holds something wrong as it was before; what is new and wrong is left out. */
function mend(draft: LibraryDraft, before: LibraryDraft, wrongs: LibraryErrors): LibraryDraft {
  const isWrong = (field: string) => hasWrong(wrongs, field);
  const sound = <T extends { readonly key: string }>(
    now: readonly T[],
    were: readonly T[],
    list: string,
  ): readonly T[] =>
    now.flatMap((entry, i) =>
      isWrong(`${list}[${i}]`) ? were.filter(({ key }) => key === entry.key) : [entry],
    );
  return {
    units: draft.units,
    currency: isWrong('currency') ? before.currency : draft.currency,
    rates: isWrong('rates') ? before.rates : draft.rates,
    printers: sound(draft.printers, before.printers, 'printers'),
    papers: sound(draft.papers, before.papers, 'papers'),
  };
}

/** Whether something is wrong in this field or inside it. */
export function hasWrong(wrongs: LibraryErrors, field: string): boolean {
  return Object.keys(wrongs).some((wrong) => isWithin(wrong, field));
}

/** How many fields are wrong in this one or inside it. */
export function countWrongs(wrongs: LibraryErrors, field: string): number {
  return Object.keys(wrongs).filter((wrong) => isWithin(wrong, field)).length;
}

function isWithin(wrong: string, field: string): boolean {
  return wrong === field || wrong.startsWith(`${field}.`) || wrong.startsWith(`${field}[`);
}
