// Run lengths of a gang run while copies come and go: the same as reckoned anew, whatever was changed before.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chanceFrom } from '../../../shared/gang/chance.ts';
import { type CopyChange, createRunLengths } from '../../../shared/gang/runLengths.ts';
import { drawnCases } from '../../kit/drawnCases.ts';

const ANY = Number.POSITIVE_INFINITY;

describe('Run lengths while copies change', () => {
  const orders = fc.record({
    quantities: fc.array(fc.integer({ min: 1, max: 500 }), { minLength: 1, maxLength: 8 }),
    forms: fc.integer({ min: 1, max: 5 }),
    slots: fc.integer({ min: 1, max: 6 }),
    seed: fc.nat(),
  });

  it('are those of the copies reckoned anew, also for designs that are on no form', () => {
    fc.assert(
      fc.property(orders, ({ quantities, forms, slots, seed }) => {
        const designs = quantities.length;
        const chance = chanceFrom(seed);
        const draw = (below: number) => Math.floor(chance() * below);
        const copies = new Int32Array(forms * designs);
        const runs = createRunLengths(quantities, forms);
        for (let k = 0; k < forms * slots; k++) {
          const at = Math.floor(k / slots) * designs + draw(designs);
          copies[at] = (copies[at] ?? 0) + 1;
        }
        runs.least(copies);
        runs.keep();
        for (let step = 0; step < 60; step++) {
          const before = copies.slice();
          const changes: CopyChange[] = [];
          const form = draw(forms);
          const away = draw(designs);
          if ((copies[form * designs + away] ?? 0) > 0) changes.push({ form, design: away, by: -1 });
          changes.push({ form, design: draw(designs), by: 1 });
          for (const { form: f, design, by } of changes) {
            copies[f * designs + design] = (copies[f * designs + design] ?? 0) + by;
          }
          const anew = createRunLengths(quantities, forms).least(copies);
          expectSame(runs.leastAfter(changes, ANY), anew);
          if (chance() < 0.5) runs.keep();
          else {
            runs.undo();
            copies.set(before);
          }
        }
      }),
      drawnCases(100),
    );
  });

  it('are told to be more than a limit only where they are', () => {
    // 300 of the first, three up on a form, and 100 of the second, one up: 100 sheets. Two up of the first need 150.
    const runs = createRunLengths([300, 100], 1);
    expect(runs.least(Int32Array.from([3, 1]))).toBeCloseTo(100, 6);
    runs.keep();
    const fewer = [{ form: 0, design: 0, by: -1 }] as const;
    const told = runs.leastAfter(fewer, 120);
    expect(told).toBeGreaterThan(120);
    expect(told).toBeLessThanOrEqual(150 + 1e-6);
    runs.undo();
    expect(runs.leastAfter(fewer, 150.5)).toBeCloseTo(150, 6);
    runs.undo();
    expect(runs.leastAfter([{ form: 0, design: 1, by: -1 }], ANY)).toBe(ANY);
  });

  it('stay the same through thousands of changes that come to nothing', () => {
    const runs = createRunLengths([300, 100, 70], 2);
    const begun = runs.least(Int32Array.from([3, 1, 0, 0, 1, 1]));
    for (let k = 0; k < 2500; k++) {
      runs.leastAfter([{ form: k % 2, design: k % 3, by: 1 }], ANY);
      runs.keep();
      expectSame(runs.leastAfter([{ form: k % 2, design: k % 3, by: -1 }], ANY), begun);
      runs.keep();
    }
  });
});

function expectSame(one: number, other: number) {
  if (other === ANY) expect(one).toBe(ANY);
  else expect(one).toBeCloseTo(other, 5);
}
