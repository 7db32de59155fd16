// The layout benchmark: how long the guillotine optimum takes, and the published instance too long for the tests.
import { readFileSync } from 'node:fs';
import { type ArrangeInput, arrange } from '../../shared/layout/arrange.ts';
import { layIdentical } from '../../shared/layout/guillotine/identical.ts';
import { POINTS_PER } from '../../shared/units/length.ts';
import { cutUnlimited } from '../../tests/kit/cutUnlimited.ts';
import { noiseFrom } from './noise.ts';

/** Cell and region in mm: usual cards, and sizes chosen to have as many stops as can be. */
const CASES = [
  ['cards 91 x 61 on 440 x 310', 91, 61, 440, 310],
  ['cards 133.35 x 184.15 on 470 x 318', 133.35, 184.15, 470, 318],
  ['50 x 50 on 1000 x 1400', 50, 50, 1000, 1400],
  ['50.3 x 71.7 on 993 x 1391', 50.3, 71.7, 993, 1391],
  ['51 x 52.9 on 1000 x 1400', 51, 52.9, 1000, 1400],
] as const;

/** Prints the first and the median time of each case, and the optimum of gcut13. */
export function benchLayout(): void {
  console.log('Guillotine optimum: cell and region in mm | count | first | median of 9');
  for (const [name, a, b, w, h] of CASES) {
    const mm = POINTS_PER.mm;
    const times: number[] = [];
    let count = 0;
    for (let i = 0; i < 9; i++) {
      const start = performance.now();
      count = layIdentical({ w: a * mm, h: b * mm }, 'either', { w: w * mm, h: h * mm }).count;
      times.push(performance.now() - start);
    }
    const [first = 0] = times;
    const median = times.toSorted((x, y) => x - y)[4] ?? 0;
    console.log(`${name} | ${count} | ${first.toFixed(1)} ms | ${median.toFixed(1)} ms`);
  }
  benchOrders('three designs of 50 to 300 mm', 3, [50, 300], 30);
  benchOrders('one design of 20 to 45 mm', 1, [20, 45], 60);
  benchGcut13();
}

/** Prints how long made-up orders take on sheets of 320 x 450 to 1000 x 1400 mm. */
function benchOrders(name: string, designs: number, [least, most]: readonly [number, number], n: number) {
  const noise = noiseFrom(designs * 9973);
  const mm = (from: number, to: number) => (from + Math.floor(noise() * (to - from))) * POINTS_PER.mm;
  const times = Array.from({ length: n }, () => {
    const input: ArrangeInput = {
      sheet: { w: mm(320, 1000), h: mm(450, 1400) },
      unprintable: { lead: 14, tail: 14, left: 14, right: 14 },
      work: { style: 'simplex' },
      gutter: mm(0, 6),
      centring: { across: 'centre', along: 'centre' },
      unit: 'mm',
      designs: Array.from({ length: designs }, (_, k) => ({
        name: `Card ${k}`,
        trim: { w: mm(least, most), h: mm(least, most) },
        bleed: 6,
        lies: 'either',
        quantity: Math.ceil(mm(20, 700)),
        turned: 'head-to-head',
        hasBack: false,
      })),
    };
    const start = performance.now();
    arrange(input);
    return performance.now() - start;
  }).sort((a, b) => a - b);
  const at = (share: number) => `${(times[Math.floor(share * (n - 1))] ?? 0).toFixed(0)} ms`;
  console.log(`${n} orders, ${name} | median ${at(0.5)} | p95 ${at(0.95)} | longest ${at(1)}`);
}

interface Instance {
  readonly sheet: readonly [number, number];
  readonly items: readonly { readonly l: number; readonly w: number; readonly value: number }[];
  readonly optimal: Readonly<Record<string, number>>;
}

/** OR-Library gcut13, every piece either way; the published optimum stands in the file. */
function benchGcut13(): void {
  const file = new URL('../../tests/reference/cutting/gcut13.json', import.meta.url);
  const { sheet, items, optimal }: Instance = JSON.parse(readFileSync(file, 'utf8'));
  const offers = items.map(({ l, w, value }) => ({ cell: { w: l, h: w }, lies: 'either' as const, value }));
  const start = performance.now();
  const { value } = cutUnlimited(offers, { w: sheet[0], h: sheet[1] });
  const seconds = ((performance.now() - start) / 1000).toFixed(1);
  console.log(
    `gcut13 either way: ${value}, published ${optimal.unconstrained_guillotine_rotated}, ${seconds} s`,
  );
}
