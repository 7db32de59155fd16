// The cutting benchmark: how long the order of cuts takes, for grids and for sheets of many sizes.
import { ANY_CUTTER } from '../../shared/cutting/cutter.ts';
import type { CuttingInput } from '../../shared/cutting/cuttingInput.ts';
import { planCuts } from '../../shared/cutting/planCuts.ts';
import { arrange } from '../../shared/layout/arrange.ts';
import type { Position } from '../../shared/layout/position.ts';

const CUTTER = { ...ANY_CUTTER, widest: 5000, deepest: 5000 };
const GRIDS = [
  [4, 6],
  [3, 8],
  [10, 10],
  [20, 25],
] as const;

/** Prints one line for each case. */
export function benchCutting(): void {
  console.log('Cutting order: sheet | pieces | cuts | turns | proven | first | median of 5');
  for (const [across, along] of GRIDS) report(`${across} x ${along} with gutters`, grid(across, along));
  report('cards of five sizes', manySizes());
}

function report(name: string, input: CuttingInput): void {
  const times: number[] = [];
  let said = 'refused';
  for (let i = 0; i < 5; i++) {
    const start = performance.now();
    const order = planCuts(input);
    times.push(performance.now() - start);
    if (order.ok) said = `${order.value.cuts} | ${order.value.turns} | ${order.value.fewest ? 'yes' : 'no'}`;
  }
  const [first = 0] = times;
  const median = times.toSorted((a, b) => a - b)[2] ?? 0;
  console.log(
    `${name} | ${input.arrangement.length} | ${said} | ${first.toFixed(0)} ms | ${median.toFixed(0)} ms`,
  );
}

function grid(across: number, along: number): CuttingInput {
  const [w, h, gutter, margin] = [144, 100, 18, 36];
  const arrangement = Array.from({ length: across * along }, (_, i): Position => {
    const x = margin + (i % across) * (w + gutter);
    const y = margin + Math.floor(i / across) * (h + gutter);
    return { piece: 'Card', face: 'front', head: 0, trim: { x, y, w, h } };
  });
  const sheet = {
    w: 2 * margin + across * (w + gutter) - gutter,
    h: 2 * margin + along * (h + gutter) - gutter,
  };
  return inputOf(sheet, arrangement);
}

function manySizes(): CuttingInput {
  const sheet = { w: 1440, h: 2016 };
  const sizes = [
    [144, 252],
    [360, 504],
    [288, 432],
    [200, 333],
    [180, 180],
  ] as const;
  const laid = arrange({
    sheet,
    unprintable: { lead: 18, tail: 18, left: 18, right: 18 },
    work: { style: 'work-and-back', turn: 'side-to-side' },
    gutter: 18,
    centring: { across: 'centre', along: 'centre' },
    unit: 'in',
    designs: sizes.map(([w, h], i) => ({
      name: `Card ${i}`,
      trim: { w, h },
      bleed: 9,
      turned: 'head-to-head',
      hasBack: true,
      lies: 'either',
      quantity: 500,
    })),
  });
  if (!laid.ok) throw new Error(laid.fault.message);
  return inputOf(sheet, laid.value.positions);
}

function inputOf(sheet: CuttingInput['sheet'], arrangement: readonly Position[]): CuttingInput {
  const names = [...new Set(arrangement.map((p) => p.piece))];
  return {
    sheet,
    arrangement,
    designs: names.map((name) => ({ name, bleed: 9, turned: 'head-to-head', hasBack: true })),
    work: { style: 'work-and-back', turn: 'side-to-side' },
    hold: { across: 'left', along: 'lead' },
    cutter: CUTTER,
    unit: 'in',
  };
}
