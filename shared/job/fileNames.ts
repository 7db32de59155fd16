// The names of the files that go to the RIP: made from a pattern, safe on every system, and never one for two files.
import { type Fault, ok, type Result, refuse } from '../fault/result.ts';

/** How files are called unless a person says otherwise. */
export const USUAL_FILE_NAMES = '{job}_form-{form}_{side}_{sheets}-sheets.pdf';

/** What a file is called after. */
export interface NamedFile {
  /** The title of the job, in any letters. */
  readonly job: string;
  /** The forms in the file, and the sides of the sheet that they print. */
  readonly forms: readonly number[];
  readonly sides: readonly (1 | 2)[];
  /** Pieces that were ordered. */
  readonly quantity: number;
  /** Sheets to print, overs included. */
  readonly sheets: number;
  /** The day: `2026-03-01`. */
  readonly date: string;
}

/** The longest name, in bytes of UTF-8: every disk that sheets are likely to meet takes it. */
const MAX_NAME_LETTERS = 140;

/** Names that Windows keeps to itself, whatever their ending. */
const KEPT_BY_WINDOWS = /^(con|prn|aux|nul|com\d|lpt\d)(?=\.|$)/i;

const PLACEHOLDERS: Readonly<Record<string, (file: NamedFile) => string>> = {
  job: (f) => f.job,
  form: (f) => f.forms.join('-'),
  side: (f) => (f.sides.length > 1 ? 'both-sides' : `side-${f.sides[0]}`),
  quantity: (f) => `${f.quantity}`,
  sheets: (f) => `${f.sheets}`,
  date: (f) => f.date,
};

/**
 * The names of these files, one each, in their order. Letters and figures of any script stay, lower case; all else
 * becomes a hyphen. A title too long for a name is cut.
 *
 * Refuses a pattern with an unknown placeholder, with a folder in it, too long, or that gives two files one name.
 *
 * @source Microsoft, Naming Files, Paths, and Namespaces (names kept by Windows, forbidden characters), from memory.
 */
export function nameFiles(pattern: string, files: readonly NamedFile[]): Result<readonly string[]> {
  const unusable = refusePattern(pattern);
  if (unusable !== undefined) return refuse(unusable);
  const names: string[] = [];
  for (const file of files) {
    const name = nameFile(pattern, file);
    if (name === undefined) {
      return refuse(
        refusal(
          'leaves no room for a name',
          `Keep names to ${MAX_NAME_LETTERS} letters, and to more than dots.`,
        ),
      );
    }
    if (names.some((n) => n.toLowerCase() === name.toLowerCase())) {
      return refuse(refusal(`calls two files ${name}`, 'Add {form} or {side} to it.'));
    }
    names.push(name);
  }
  return ok(names);
}

function refusePattern(pattern: string): Fault | undefined {
  const known = Object.keys(PLACEHOLDERS).map((p) => `{${p}}`);
  const unknown = [...pattern.matchAll(/\{([^{}]*)\}/g)].find(
    (m) => !Object.hasOwn(PLACEHOLDERS, m[1] ?? ''),
  );
  if (unknown !== undefined) {
    return refusal(`holds ${unknown[0]}, which stands for nothing`, `Use ${known.join(', ')}.`);
  }
  if (/[{}]/.test(pattern.replace(/\{[^{}]*\}/g, ''))) {
    return refusal('holds a brace without its partner', `Use ${known.join(', ')}.`);
  }
  if (/[/\\]/.test(pattern))
    return refusal('names a folder', 'Choose the folder itself, and keep / and \\ out.');
  return undefined;
}

function refusal(what: string, remedy: string): Fault {
  return { code: 'name-unusable', message: `The pattern for file names ${what}.`, remedy };
}

/** The name of one file, or `undefined` where the pattern leaves none. */
function nameFile(pattern: string, file: NamedFile): string | undefined {
  const parts = pattern.replace(/\.pdf$/i, '').split(/\{([^{}]*)\}/);
  const fill = (job: string) =>
    parts
      .map((part, i) => {
        if (i % 2 === 0) return part.replace(/[^\p{L}\p{M}\p{N}._-]+/gu, '-');
        return part === 'job' ? job : plain(PLACEHOLDERS[part]?.(file) ?? '');
      })
      .join('');
  const jobs = parts.filter((part, i) => i % 2 === 1 && part === 'job').length;
  const room = MAX_NAME_LETTERS - bytesOf(`${fill('')}.pdf`);
  if (room < 0) return undefined;
  const job = cut(plain(file.job) || 'untitled', jobs === 0 ? 0 : Math.floor(room / jobs));
  const name = fill(job)
    .normalize('NFC')
    .replace(/^[.-]+/, '')
    .replace(/\.+$/, '');
  if (name === '') return undefined;
  return `${KEPT_BY_WINDOWS.test(name) ? 'job-' : ''}${name}.pdf`;
}

/** Letters and figures, lower case, in their plain forms; each stretch of anything else becomes a hyphen. */
function plain(text: string): string {
  const letters = text.normalize('NFKC').toLowerCase().normalize('NFKC');
  return letters.replace(/[^\p{L}\p{M}\p{N}]+/gu, '-').replace(/^-+|-+$/g, '');
}

/** The beginning of a text, in whole characters, that takes no more than so many bytes. */
function cut(text: string, bytes: number): string {
  let kept = '';
  let room = bytes;
  for (const character of text) {
    room -= bytesOf(character);
    if (room < 0) return kept.replace(/-+$/, '');
    kept += character;
  }
  return kept;
}

/** The length of a text in UTF-8. */
function bytesOf(text: string): number {
  return Array.from(text, (c) => c.codePointAt(0) ?? 0).reduce(
    (sum, point) => sum + (point < 0x80 ? 1 : point < 0x800 ? 2 : point < 0x10000 ? 3 : 4),
    0,
  );
}
