// The four plates of process printing, and what share of each a colour of grey, red-green-blue or four inks takes.

export const PLATES = ['cyan', 'magenta', 'yellow', 'black'] as const;
export type Plate = (typeof PLATES)[number];

/** How many numbers a colour has: grey, red-green-blue, or the four inks. */
export type Parts = 1 | 3 | 4;

/**
 * What a plate shows of a colour, as a grey: 1 where it has no ink, 0 where it is covered. As JavaScript.
 *
 * Colours of light are turned into inks by full grey replacement: what cyan, magenta and yellow have in common goes to
 * black, and is taken from each of them.
 *
 * @source ISO 32000-1, 10.3.3 (grey to inks), 10.3.4 and 10.3.5 (RGB to inks, with black generation and undercolour
 * removal whole).
 */
export function plateGrey(plate: Plate, colour: readonly number[]): number {
  const [first = 0, second = 0, third = 0] = colour;
  const place = PLATES.indexOf(plate);
  if (colour.length === 4) return 1 - (colour[place] ?? 0);
  if (colour.length === 1) return plate === 'black' ? first : 1;
  const lightest = Math.max(first, second, third);
  return plate === 'black' ? lightest : 1 - lightest + (colour[place] ?? 0);
}

/** Leaves the largest of three numbers above them. */
const LARGEST = '3 copy 2 copy lt {exch} if pop 2 copy lt {exch} if pop';
const WITHOUT_INK = '1 exch sub';

/** The same as a PostScript calculation, from the numbers of the colour on the stack. */
export const PLATE_CALCULATIONS: Readonly<Record<Plate, Readonly<Record<Parts, string>>>> = {
  cyan: {
    1: 'pop 1',
    3: `${LARGEST} 4 1 roll pop pop exch sub 1 add`,
    4: `pop pop pop ${WITHOUT_INK}`,
  },
  magenta: {
    1: 'pop 1',
    3: `${LARGEST} 4 1 roll pop exch pop exch sub 1 add`,
    4: `pop pop exch pop ${WITHOUT_INK}`,
  },
  yellow: {
    1: 'pop 1',
    3: `${LARGEST} 4 1 roll 3 1 roll pop pop exch sub 1 add`,
    4: `pop 3 1 roll pop pop ${WITHOUT_INK}`,
  },
  black: {
    1: '',
    3: `${LARGEST} 4 1 roll pop pop pop`,
    4: `4 1 roll pop pop pop ${WITHOUT_INK}`,
  },
};
