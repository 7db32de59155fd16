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

/** JDF specification (CIP4), Appendix F: Tables F-1, F-2 and F-3. */
const TABLES = JSON.parse(readFileSync(new URL('../../reference/paper.json', import.meta.url), 'utf8')) as {
  readonly grams_in_a_pound_millimetres_in_an_inch: readonly [number, number];
  readonly basic_sizes_in: Readonly<Record<Grade, readonly [number, number]>>;
  readonly factors: readonly { readonly grade: Grade; readonly gsm_of_a_pound: number }[];
  readonly weights: readonly { readonly grade: Grade; readonly basis_lb: number; readonly gsm: number }[];
  readonly japanese_weights: readonly { readonly size: string; readonly kg: number; readonly gsm: number }[];
};

/** By the definition: pounds to a ream of 500 sheets of the basic size, in grams and metres. */
function byDefinition(pounds: number, grade: Grade): number {
  const [pound, inch] = TABLES.grams_in_a_pound_millimetres_in_an_inch;
  const [w, h] = TABLES.basic_sizes_in[grade];
  return (pounds * pound) / 500 / (((w * inch) / 1000) * ((h * inch) / 1000));
}

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
  it.each(TABLES.weights)('$basis_lb lb $grade is $gsm g/m2', ({ basis_lb, grade, gsm }) => {
    const grams = grammageOf(basis_lb, grade);
    expect(grams).toBeCloseTo(byDefinition(basis_lb, grade), 9);
    // The table is rounded to whole grams, and reckons with a factor of its own.
    expect(Math.abs(grams - gsm)).toBeLessThanOrEqual(1);
    expect(gramsIn(`${basis_lb} lb ${grade}`)).toBe(grams);
  });

  it.each(TABLES.factors)('a pound of $grade is $gsm_of_a_pound g/m2', ({ grade, gsm_of_a_pound }) => {
    expect(Math.abs(grammageOf(1, grade) - gsm_of_a_pound)).toBeLessThan(0.006);
  });

  it.each(GRADES)('goes from grams to pounds of %s and back', (grade) => {
    expect(grammageOf(100, grade)).toBeCloseTo(byDefinition(100, grade), 9);
    expect(basisWeightOf(grammageOf(80, grade), grade)).toBeCloseTo(80, 9);
  });

  // The worked examples of the same appendix, which reckons with 1406.5 instead of the exact constant.
  it('65 lb cover is 176 g/m2, and 100 g/m2 is 67.5 lb book', () => {
    expect(grammageOf(65, 'cover')).toBeCloseTo(176, 0);
    expect(Math.abs(basisWeightOf(100, 'book') - 67.5)).toBeLessThan(0.1);
  });

  // The table's kilograms are rounded to halves, so that its grams are off by up to 0.9.
  it.each(TABLES.japanese_weights)('$kg kg to a thousand sheets of $size mm is $gsm g/m2', (row) => {
    const [w = 0, h = 0] = row.size.split('x').map(Number);
    const grams = gramsIn(`${row.kg} kg ${w} x ${h} mm`);
    // A thousand sheets weigh so many kilograms, so one sheet as many grams.
    expect(grams).toBeCloseTo(row.kg / ((w * h) / 1e6), 9);
    expect(Math.abs(grams - row.gsm)).toBeLessThan(1);
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
    expect(refusalOf('9.9 gsm')?.message).toContain('"9.9 gsm" is 9.9 g/m2, which is not a paper');
    expect(refusalOf('2001 gsm')?.code).toBe('length-unreadable');
    expect(refusalOf('800 lb cover')?.message).toContain('2160 g/m2');
  });
});
