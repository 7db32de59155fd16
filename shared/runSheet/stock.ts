// What the library of a studio tells a run sheet: which paper is loaded, how thick it is, and what the cutter takes.
import { ANY_CUTTER, type Cutter } from '../cutting/cutter.ts';
import { type Fault, ok, type Result, refuse } from '../fault/result.ts';
import type { Library } from '../library/library.ts';
import { POINTS_PER, points } from '../units/length.ts';

/** The paper of a run, as far as it is known. */
export interface Stock {
  /** None where the paper was not named. */
  readonly name?: string;
  /** In g/m2. */
  readonly grammage?: number;
  /** How thick a sheet is, in pt. */
  readonly caliper?: number;
  /** Whether the paper is coated, and where. */
  readonly coated?: 'none' | 'one-side' | 'both-sides';
  /** Whether its two sides are alike. */
  readonly sidesAlike?: boolean;
  readonly cutter: Cutter;
}

/** The stock for a paper of the library (`paper-unknown` where it has none of that name); only the cutter without one. */
export function stockFrom(library: Library, paper: string | undefined): Result<Stock> {
  const cutter = cutterOf(library);
  if (paper === undefined) return ok({ cutter });
  const found = library.papers.find(({ name }) => name.toLowerCase() === paper.toLowerCase());
  if (found === undefined) return refuse(unknown(library, paper));
  const { name, weight, caliper, coated, sidesAlike } = found;
  return ok({
    name,
    grammage: weight.grammage,
    caliper: (caliper.micrometres / 1000) * POINTS_PER.mm,
    coated,
    sidesAlike,
    cutter,
  });
}

/** The cutter of the studio; a pile that does not go under its clamp is cut in more lifts. */
function cutterOf({ rates }: Library): Cutter {
  const { tallestPile, widest, deepest, opening, leastGauge } = rates.cutting;
  return {
    ...ANY_CUTTER,
    widest: points(widest),
    deepest: points(deepest),
    opening: points(opening),
    leastGauge: points(leastGauge),
    mostStack: Math.min(points(tallestPile), points(opening)),
  };
}

function unknown({ papers }: Library, paper: string): Fault {
  const names = papers.map(({ name }) => name).join(', ');
  return {
    code: 'paper-unknown',
    message: `The library has no paper called "${paper}".`,
    remedy: names === '' ? 'Add the paper to the library.' : `Take one of these: ${names}.`,
  };
}
