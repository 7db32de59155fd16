// Taking in a PDF from a stranger: opened, or refused in a sentence that says what to do.
import { PDFDict, PDFDocument, type PDFObject } from 'pdf-lib';
import { type Fault, ok, type Result, refuse } from '../../fault/result.ts';
import { type ArtPage, readPage } from './artPage.ts';
import { ART_LIMITS, type ArtLimits } from './limits.ts';
import { forbiddenWords, refuseLocked } from './locked.ts';
import { refuseOther } from './notPdf.ts';
import { type Leaf, walkPages } from './pageTree.ts';
import { asDict, follow, under } from './peek.ts';
import { withoutTrailers } from './withoutTrailers.ts';

/** An opened PDF. What it holds stays as the file has it; nothing in it is changed. */
export interface OpenArt {
  /** The file, as said to people. */
  readonly name: string;
  readonly document: PDFDocument;
  readonly catalog: PDFDict;
  readonly limits: ArtLimits;
  /** At least 1. */
  readonly pageCount: number;
  /** What the person should know of the file as a whole, in words. */
  readonly notices: readonly string[];
  /** The size and boxes of page `n`, counted from 1. */
  page(n: number): Result<ArtPage>;
  /** The same page as it stands in the file. */
  leaf(n: number): Result<Leaf>;
}

export interface OpenOptions {
  /** What to call the file in sentences: its name without the folders. */
  readonly name?: string;
  /** The empty password is tried where none is given. */
  readonly password?: string;
  readonly limits?: Partial<ArtLimits>;
}

/**
 * Opens a PDF. Never throws for anything that the bytes hold.
 *
 * Object streams are unpacked by the library without a limit, so bytes from a stranger belong in a thread with
 * limits on time and memory first.
 *
 * @source ISO 32000-1, 7.5 (file structure), 7.6 (encryption), 7.7 (document structure).
 */
export async function openArt(bytes: Uint8Array, options: OpenOptions = {}): Promise<Result<OpenArt>> {
  const { name = 'The art', password = '' } = options;
  const limits = { ...ART_LIMITS, ...options.limits };
  const other = refuseOther(bytes, name);
  if (other !== undefined) return refuse(other);
  try {
    const loaded = await load(bytes, name, password);
    return loaded.ok ? readDocument(loaded.value, name, limits) : loaded;
  } catch {
    return refuse(damaged(name));
  }
}

interface Loaded {
  readonly document: PDFDocument;
  readonly root: PDFObject | undefined;
  readonly notices: readonly string[];
}

/** What the library says of a file that the password does not open, or that only a certificate opens. */
const LOCKED = /^(NEEDS PASSWORD|Password incorrect|unknown encryption method)$/;

async function load(bytes: Uint8Array, name: string, password: string): Promise<Result<Loaded>> {
  const asItIs = await loadAsItIs(bytes, name);
  const { document, notices } = asItIs;
  const root = document.context.trailerInfo.Root;
  if (!document.isEncrypted) return ok({ document, root, notices });
  try {
    const opened = await PDFDocument.load(bytes, { password, updateMetadata: false });
    return ok({ document: opened, root, notices: [...notices, ...forbiddenWords(document.context, name)] });
  } catch (error) {
    const locked = error instanceof Error && LOCKED.test(error.message);
    return refuse(locked ? refuseLocked(name, password) : damaged(name));
  }
}

/** Reads the file without opening its lock, and without its end where that is damaged. */
async function loadAsItIs(bytes: Uint8Array, name: string): Promise<Omit<Loaded, 'root'>> {
  const options = { ignoreEncryption: true, updateMetadata: false };
  try {
    return { document: await PDFDocument.load(bytes, options), notices: [] };
  } catch (error) {
    const rest = withoutTrailers(bytes);
    if (rest === undefined) throw error;
    const notice = `The end of ${name} is damaged, so it was read without it. Look closely at the proof.`;
    return { document: await PDFDocument.load(rest, options), notices: [notice] };
  }
}

function readDocument(loaded: Loaded, name: string, limits: ArtLimits): Result<OpenArt> {
  const { document, notices } = loaded;
  const { context } = document;
  const catalog = asDict(context, loaded.root) ?? document.catalog;
  if (!(catalog instanceof PDFDict)) return refuse(damaged(name));
  const top = follow(context, under(catalog, 'Pages'));
  if (!(top instanceof PDFDict)) return refuse(damaged(name));
  const walked = walkPages(context, top, limits, name);
  if (!walked.ok) return walked;
  const leaves = walked.value;
  if (leaves.length === 0) return refuse(empty(name));

  const leaf = (n: number): Result<Leaf> => {
    if (!Number.isInteger(n) || n < 1 || n > leaves.length) return refuse(noSuchPage(name, n, leaves.length));
    const found = leaves[n - 1];
    return found === undefined ? refuse(lostPage(name, n)) : ok(found);
  };
  const page = (n: number): Result<ArtPage> => {
    const found = leaf(n);
    return found.ok ? readPage(context, found.value, { art: name, number: n }, limits) : found;
  };
  return ok({ name, document, catalog, limits, pageCount: leaves.length, notices, page, leaf });
}

function damaged(art: string): Fault {
  return {
    code: 'art-damaged',
    message: `${art} is damaged: it begins as a PDF but cannot be read.`,
    remedy: 'Ask for the file again, or export it again; a broken download or mail often is the cause.',
    where: art,
  };
}

function empty(art: string): Fault {
  return {
    code: 'art-empty',
    message: `${art} has no pages.`,
    remedy: 'Export it again with the pages that this job prints.',
    where: art,
  };
}

function lostPage(art: string, n: number): Fault {
  return {
    code: 'art-damaged',
    message: `Page ${n} of ${art} is lost: the file lists it but does not hold it.`,
    remedy: 'Ask for the file again, or export it again.',
    where: art,
  };
}

function noSuchPage(art: string, n: number, pages: number): Fault {
  const has = pages === 1 ? 'only one page' : `only ${pages} pages`;
  return {
    code: 'art-page-missing',
    message: `There is no page ${n} in ${art}: it has ${has}.`,
    remedy: 'Name a page that the file has; pages count from 1.',
    where: art,
  };
}
