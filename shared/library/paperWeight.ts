// The weight of a paper: grams to the square metre, or pounds to the ream of its grade's basic size.
import { type Fault, ok, type Result, refuse } from '../fault/result.ts';
import { showSignificant } from '../units/show.ts';

/** How heavy a paper is. `typed` is what is kept in files. */
export interface PaperWeight {
  /** In g/m2. */
  readonly grammage: number;
  readonly typed: string;
}

/** Grades of paper whose basis weight is that of a ream in the grade's own basic size. */
export const GRADES = [
  'bond',
  'ledger',
  'manifold',
  'book',
  'text',
  'offset',
  'cover',
  'bristol',
  'index',
  'tag',
  'newsprint',
] as const;
export type Grade = (typeof GRADES)[number];

/** Sheets to the ream. */
export const SHEETS_PER_REAM = 500;

/**
 * The basic size of each grade, in inches.
 *
 * @source JDF specification (CIP4), Appendix F, Table F-1; Bristol and index with the half inches that the table's own
 * factors ask for (it prints 22 x 28 and 25 x 30).
 */
const BASIC_SIZE: Readonly<Record<Grade, readonly [number, number]>> = {
  bond: [17, 22],
  ledger: [17, 22],
  manifold: [17, 22],
  book: [25, 38],
  text: [25, 38],
  offset: [25, 38],
  cover: [20, 26],
  bristol: [22.5, 28.5],
  index: [25.5, 30.5],
  tag: [24, 36],
  newsprint: [24, 36],
};

/** Grams to the pound (international avoirdupois, exactly), and square metres to the square inch (exactly). */
const GRAMS_PER_POUND = 453.59237;
const M2_PER_IN2 = 0.0254 ** 2;

/** Grams to the square metre of a paper of this grade, `pounds` being what 500 sheets in its basic size weigh. */
export function grammageOf(pounds: number, grade: Grade): number {
  return (pounds * GRAMS_PER_POUND) / (SHEETS_PER_REAM * basicArea(grade));
}

/** What 500 sheets in the grade's basic size weigh, in pounds. */
export function basisWeightOf(grammage: number, grade: Grade): number {
  return (grammage * SHEETS_PER_REAM * basicArea(grade)) / GRAMS_PER_POUND;
}

function basicArea(grade: Grade): number {
  const [a, b] = BASIC_SIZE[grade];
  return a * b * M2_PER_IN2;
}

const METRIC = /^(?<amount>\d*\.?\d+)\s*(?:g|gsm|g\/m2|g\/m²|g\/sqm)$/;
const BASIS = /^(?<amount>\d*\.?\d+)\s*(?:lb|lbs|#)\.?\s*(?<grade>[a-z]+)$/;

const PER_THOUSAND = /^(?<amount>\d*\.?\d+)\s*kg\s+(?<w>\d*\.?\d+)\s*[x×]\s*(?<h>\d*\.?\d+)\s*mm$/;

/** Lighter or heavier is no paper that is printed here, in g/m2. */
const MIN_GSM = 10;
const MAX_GSM = 2000;

/**
 * Reads `300 gsm`, `300 g/m2`, `100 lb cover`, `80# text`, or `110 kg 788 x 1091 mm`, which is what 1000 sheets of that
 * size weigh.
 *
 * @source JDF specification (CIP4), Appendix F, for pounds and (F.2) for kilograms to a thousand sheets.
 */
export function readPaperWeight(text: string): Result<PaperWeight> {
  const typed = text.trim();
  const lower = typed.toLowerCase();
  const metric = METRIC.exec(lower)?.groups;
  if (metric !== undefined) return checked(Number(metric.amount), typed);
  const thousand = PER_THOUSAND.exec(lower)?.groups;
  if (thousand !== undefined) {
    const { amount, w, h } = thousand;
    return checked((Number(amount) * 1e6) / (Number(w) * Number(h)), typed);
  }
  const basis = BASIS.exec(lower)?.groups;
  if (basis === undefined) return refuse(unreadable(text));
  const grade = GRADES.find((g) => g === basis.grade);
  if (grade === undefined) return refuse(gradeUnknown(text));
  return checked(grammageOf(Number(basis.amount), grade), typed);
}

function checked(grammage: number, typed: string): Result<PaperWeight> {
  if (grammage < MIN_GSM || grammage > MAX_GSM) {
    return refuse({
      code: 'length-unreadable',
      message: `"${typed}" is ${showSignificant(grammage, 3)} g/m2, which is not a paper that is printed here.`,
      remedy: EXAMPLES,
    });
  }
  return ok({ grammage, typed });
}

const EXAMPLES =
  'Write it like 300 gsm, or like 100 lb cover: pounds need the grade whose basic size they mean.';

function unreadable(text: string): Fault {
  return { code: 'length-unreadable', message: `"${text}" is not the weight of a paper.`, remedy: EXAMPLES };
}

function gradeUnknown(text: string): Fault {
  return {
    code: 'length-unreadable',
    message: `"${text}" does not name a grade with a basic size of its own.`,
    remedy: `The grades are ${GRADES.join(', ')}. ${EXAMPLES}`,
  };
}
