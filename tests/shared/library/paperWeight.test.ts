// Grammage and basis weight: every conversion of the handbook's tables.
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  basisWeightOf,
  GRADES,
  type Grade,
  grammageOf,
  readPaperWeight,
} from '../../../shared/library/paperWeight.ts';

/** JDF specification (CIP4), Appendix F: Tables F-1, F-2 and F-3, and the formula above them. */
const TABLES = JSON.parse(readFileSync(new URL('../../reference/paper.json', import.meta.url), 'utf8')) as {
  readonly formula: { readonly k_exact: number };
  readonly basic_sizes_in: Readonly<Record<Grade, readonly [number, number]>>;
  readonly factor_table: readonly { readonly grade: Grade; readonly factor_handbook: number }[];
  readonly handbook_table: {
    readonly tolerance_gsm: number;
    readonly rows: readonly {
      readonly grade: Grade;
      readonly basis_lb: number;
      readonly gsm_handbook: number;
      readonly gsm_computed: number;
      readonly agree_within_1: boolean;
    }[];
  };
  readonly japan_check: readonly {
    readonly name: string;
    readonly kg: number;
    readonly gsm: number;
    readonly computed: number;
  }[];
};

const gramsIn = (text: string) => {
  const read = readPaperWeight(text);
  if (!read.ok) throw new Error(read.fault.message);
  return read.value.grammage;
};
const refusalOf = (text: string) => {
  const read = readPaperWeight(text);
  return read.ok ? undefined : read.fault;
};

describe('the weight of a paper', () => {
  it.each(TABLES.handbook_table.rows)('$basis_lb lb $grade is $gsm_computed g/m2', (row) => {
    const grams = grammageOf(row.basis_lb, row.grade);
    expect(grams).toBeCloseTo(row.gsm_computed, 2);
    expect(Math.abs(grams - row.gsm_handbook) <= TABLES.handbook_table.tolerance_gsm).toBe(
      row.agree_within_1,
    );
    expect(gramsIn(`${row.basis_lb} lb ${row.grade}`)).toBe(grams);
  });

  it.each(TABLES.factor_table)('a pound of $grade is $factor_handbook g/m2', ({ grade, factor_handbook }) => {
    expect(grammageOf(1, grade)).toBeCloseTo(factor_handbook, 1);
    expect(Math.abs(grammageOf(1, grade) - factor_handbook)).toBeLessThan(0.006);
  });

  it.each(GRADES)('goes from grams to pounds of %s and back', (grade) => {
    const [a, b] = TABLES.basic_sizes_in[grade];
    expect(grammageOf(100, grade)).toBeCloseTo((100 * TABLES.formula.k_exact) / (a * b), 9);
    expect(basisWeightOf(grammageOf(80, grade), grade)).toBeCloseTo(80, 9);
  });

  // The worked examples of the same appendix, which reckons with 1406.5 instead of the exact constant.
  it('65 lb cover is 176 g/m2, and 100 g/m2 is 67.5 lb book', () => {
    expect(grammageOf(65, 'cover')).toBeCloseTo(176, 0);
    expect(Math.abs(basisWeightOf(100, 'book') - 67.5)).toBeLessThan(0.1);
  });

  // The table's kilograms are rounded to halves, so that its grams are off by up to 0.9.
  it.each(TABLES.japan_check)('$kg kg to a thousand sheets of $name is $gsm g/m2', (row) => {
    const size = row.name.replace(' mm', '').replace('x', ' x ');
    expect(gramsIn(`${row.kg} kg ${size} mm`)).toBeCloseTo(row.computed, 1);
    expect(Math.abs(gramsIn(`${row.kg} kg ${size} mm`) - row.gsm)).toBeLessThan(1);
  });

  it.each(['300 gsm', '300 g/m2', '300g/m²', '300 G'])(
    '%s is read as 300 g/m2, and kept as typed',
    (text) => {
      expect(readPaperWeight(` ${text} `)).toEqual({ ok: true, value: { grammage: 300, typed: text } });
    },
  );

  it.each(['80# text', '80 lbs text', '80lb. Text', '80 LB TEXT'])('%s is read as 80 lb text', (text) => {
    expect(gramsIn(text)).toBe(grammageOf(80, 'text'));
  });

  it('in pounds needs the grade whose basic size they mean', () => {
    expect(refusalOf('100 lb')?.message).toBe('"100 lb" is not the weight of a paper.');
    expect(refusalOf('100 lb')?.remedy).toContain('pounds need the grade');
    expect(refusalOf('100 lb velvet')?.message).toBe(
      '"100 lb velvet" does not name a grade with a basic size of its own.',
    );
    expect(refusalOf('100 lb velvet')?.remedy).toContain('bond, ledger, manifold');
  });

  it('is refused where no paper weighs that much or that little', () => {
    expect(gramsIn('10 gsm')).toBe(10);
    expect(gramsIn('2000 gsm')).toBe(2000);
    expect(refusalOf('9.9 gsm')?.message).toContain('"9.9 gsm" is 9.90 g/m2, which is not a paper');
    expect(refusalOf('2001 gsm')?.code).toBe('length-unreadable');
    expect(refusalOf('800 lb cover')?.message).toContain('2.16e+3 g/m2');
  });
});
