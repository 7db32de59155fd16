// Proposing pieces from dropped art: which pages are front and back of one piece, how large it is, and what must be asked.
import type { ArtPage } from '../pdf/art/artPage.ts';
import type { Length, Unit } from '../units/length.ts';
import { oppositeFaceName, stemOf, wordsOfName } from './faceWords.ts';
import { readSizes, type SizeReading } from './readSizes.ts';
import type { LengthPair } from './usualSizes.ts';

/** A file of art; `art` is whatever names it. */
export interface TakenFile {
  readonly art: string;
  readonly name: string;
  readonly pages: readonly ArtPage[];
}

export interface ProposedFace {
  readonly art: string;
  /** From 1. */
  readonly page: number;
}

export interface ProposedPiece {
  readonly name: string;
  readonly trim: LengthPair;
  readonly bleed: Length;
  readonly front: ProposedFace;
  readonly back?: ProposedFace;
}

/** What the art leaves open; the first answer is the likeliest. */
export interface IntakeQuestion {
  readonly id: string;
  readonly asks: string;
  readonly answers: readonly { readonly value: string; readonly label: string }[];
}

/** What was answered, by the question's `id`; anything else stands as proposed. */
export type IntakeAnswers = Readonly<Record<string, string>>;

export interface IntakeProposal {
  readonly pieces: readonly ProposedPiece[];
  readonly questions: readonly IntakeQuestion[];
}

interface Page extends ProposedFace {
  readonly file: TakenFile;
  readonly seen: ArtPage;
}

/** Pages that make one piece. */
interface Bundle {
  readonly name: string;
  readonly front: Page;
  readonly back?: Page | undefined;
}

/** Pieces for these files in the order they came, with what must be asked about them. */
export function proposePieces(
  files: readonly TakenFile[],
  unit: Unit,
  answers: IntakeAnswers = {},
): IntakeProposal {
  const questions: IntakeQuestion[] = [];
  const ask = (question: IntakeQuestion): string => {
    questions.push(question);
    const answer = answers[question.id];
    const known = question.answers.find((a) => a.value === answer) ?? question.answers[0];
    return known?.value ?? '';
  };
  const bundles = [
    ...bundleSingles(files, ask),
    ...files.filter((f) => f.pages.length > 1).flatMap((f) => bundleFile(f, ask)),
  ];
  const inOrder = bundles.toSorted((a, b) => files.indexOf(a.front.file) - files.indexOf(b.front.file));
  const pieces = inOrder.map((bundle): ProposedPiece => {
    const { trim, bleed } = chooseSize(bundle, unit, ask);
    const { front, back } = bundle;
    return { name: bundle.name, trim, bleed, front: faceOf(front), ...(back && { back: faceOf(back) }) };
  });
  return { pieces: withNamesApart(pieces), questions };
}

type Ask = (question: IntakeQuestion) => string;

/** Files of one page: a front and a back that say so, or two that may be. */
function bundleSingles(files: readonly TakenFile[], ask: Ask): readonly Bundle[] {
  const singles = files.filter((f) => f.pages.length === 1).flatMap(pagesOf);
  const left = new Set(singles);
  const bundles: Bundle[] = [];
  for (const page of singles) {
    const words = wordsOfName(page.file.name);
    const back = [...left].find(
      (p) =>
        p !== page &&
        words.face === 'front' &&
        oppositeFaceName(page.file.name, p.file.name) &&
        sameSize(p, page),
    );
    if (back === undefined || !left.has(page)) continue;
    bundles.push({ name: words.name, front: page, back });
    left.delete(page);
    left.delete(back);
  }
  const [one, other, ...more] = left;
  if (one === undefined) return bundles;
  if (
    other === undefined ||
    more.length > 0 ||
    !sameSize(one, other) ||
    hasFaceWord(one) ||
    hasFaceWord(other)
  ) {
    return [...bundles, ...[...left].map((front) => ({ name: wordsOfName(front.file.name).name, front }))];
  }
  const [a, b] = [one.file.name, other.file.name];
  const answer = ask({
    id: `pair ${one.art} ${other.art}`,
    asks: `Are ${a} and ${b} the two faces of one piece?`,
    answers: [
      { value: 'first', label: `Yes, ${a} is the front` },
      { value: 'second', label: `Yes, ${b} is the front` },
      { value: 'apart', label: 'No, they are two pieces' },
    ],
  });
  if (answer === 'apart')
    return [...bundles, ...[one, other].map((front) => ({ name: stemOf(front.file.name), front }))];
  const [front, back] = answer === 'first' ? [one, other] : [other, one];
  return [...bundles, { name: stemOf(front.file.name), front, back }];
}

/** A file of several pages: front and back, or what is answered. */
function bundleFile(file: TakenFile, ask: Ask): readonly Bundle[] {
  const pages = pagesOf(file);
  const stem = stemOf(file.name);
  const [first, second] = pages;
  const apart = pages.map((front) => ({ name: `${stem} ${front.page}`, front }));
  if (first === undefined || second === undefined || !pages.every((p) => sameSize(p, first))) return apart;
  if (pages.length === 2) return [{ name: stem, front: first, back: second }];
  const last = pages.at(-1);
  const pairs = { value: 'pairs', label: 'Front and back by turns' };
  const answer = ask({
    id: `pages ${file.art}`,
    asks: `${file.name} has ${pages.length} pages. How do they belong together?`,
    answers: [
      ...(pages.length % 2 === 0 ? [pairs] : []),
      { value: 'shared', label: 'The last page is the back of all others' },
      { value: 'apart', label: 'Each page is a piece with one printed face' },
    ],
  });
  if (answer === 'apart') return apart;
  if (answer === 'shared') return apart.slice(0, -1).map((bundle) => ({ ...bundle, back: last }));
  return pages.flatMap((front, i) =>
    i % 2 === 0 ? [{ name: `${stem} ${i / 2 + 1}`, front, back: pages[i + 1] }] : [],
  );
}

function chooseSize({ name, front }: Bundle, unit: Unit, ask: Ask): SizeReading {
  const readings = readSizes(front.seen, unit);
  const [likeliest] = readings;
  if (likeliest === undefined) throw new Error('A page can always be read as the piece itself');
  if (readings.length === 1) return likeliest;
  const answer = ask({
    id: `size ${front.art} ${front.page}`,
    asks: `The page of ${name} does not say where it is trimmed. How large is the piece?`,
    answers: readings.map((r) => ({ value: r.from, label: `${inWords(r.trim)}: ${r.from}` })),
  });
  return readings.find((r) => r.from === answer) ?? likeliest;
}

function inWords([w, h]: LengthPair): string {
  return w.unit === h.unit ? `${w.amount} × ${h.amount} ${w.unit}` : `${w.typed} × ${h.typed}`;
}

function pagesOf(file: TakenFile): readonly Page[] {
  return file.pages.map((seen) => ({ art: file.art, page: seen.number, file, seen }));
}

function faceOf({ art, page }: Page): ProposedFace {
  return { art, page };
}

function hasFaceWord(page: Page): boolean {
  return wordsOfName(page.file.name).face !== undefined;
}

function sameSize(a: Page, b: Page): boolean {
  const [one, other] = [a.seen.size, b.seen.size];
  return Math.abs(one.w - other.w) < 1 && Math.abs(one.h - other.h) < 1;
}

/** Names that several pieces have are counted. */
function withNamesApart(pieces: readonly ProposedPiece[]): readonly ProposedPiece[] {
  return pieces.map((piece, i) => {
    const before = pieces.slice(0, i).filter((p) => p.name === piece.name).length;
    return before === 0 ? piece : { ...piece, name: `${piece.name} (${before + 1})` };
  });
}
