import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type NamedFile, nameFiles, USUAL_FILE_NAMES } from '../../../shared/job/fileNames.ts';

const supper: NamedFile = {
  job: 'Harvest supper',
  forms: [1],
  sides: [1, 2],
  quantity: 120,
  sheets: 33,
  date: '2026-03-01',
};
const sideOne: NamedFile = { ...supper, sides: [1] };
const sideTwo: NamedFile = { ...supper, forms: [2], sides: [2] };

const namesOf = (pattern: string, ...files: readonly NamedFile[]) => {
  const named = nameFiles(pattern, files);
  if (!named.ok) throw new Error(named.fault.message);
  return named.value;
};

const refusalOf = (pattern: string, ...files: readonly NamedFile[]) => {
  const named = nameFiles(pattern, files);
  if (named.ok) throw new Error(`called ${named.value}`);
  expect(named.fault.code).toBe('name-unusable');
  return `${named.fault.message} ${named.fault.remedy}`;
};

describe('the names of files', () => {
  it('say job, form, side and sheets unless something else is asked for', () => {
    expect(namesOf(USUAL_FILE_NAMES, supper)).toEqual(['harvest-supper_form-1_both-sides_33-sheets.pdf']);
    expect(namesOf(USUAL_FILE_NAMES, sideOne, sideTwo)).toEqual([
      'harvest-supper_form-1_side-1_33-sheets.pdf',
      'harvest-supper_form-2_side-2_33-sheets.pdf',
    ]);
    expect(namesOf(USUAL_FILE_NAMES, { ...supper, forms: [1, 2] })).toEqual([
      'harvest-supper_form-1-2_both-sides_33-sheets.pdf',
    ]);
  });

  it('are made of all that a pattern asks for', () => {
    const pattern = '{date}-{job}-{quantity}x{form}-{side}-{sheets}';
    expect(namesOf(pattern, supper)).toEqual(['2026-03-01-harvest-supper-120x1-both-sides-33.pdf']);
    expect(namesOf('For Monday {job}.PDF', supper)).toEqual(['For-Monday-harvest-supper.pdf']);
  });

  it.each([
    ['Tea & "cake" <for> two: 50% off?', 'tea-cake-for-two-50-off'],
    ['Ünïcödé Straße', 'ünïcödé-straße'],
    ['cafe\u0301', 'caf\u00e9'],
    ['収穫祭 2026', '収穫祭-2026'],
    ['ﬁne Ｆull', 'fine-full'],
    ['../../etc/passwd', 'etc-passwd'],
    ['...', 'untitled'],
    ['', 'untitled'],
    ['a\u0000b\nc\ud800', 'a-b-c'],
  ])('take the title %j as %s', (job, name) => {
    expect(namesOf('{job}', { ...supper, job })).toEqual([`${name}.pdf`]);
  });

  it.each(['CON', 'prn', 'Aux', 'nul', 'COM1', 'lpt9', 'com¹'])(
    'keep off %s, which Windows keeps to itself',
    (job) => {
      expect(namesOf('{job}', { ...supper, job })[0]).toBe(`job-${job.normalize('NFKC').toLowerCase()}.pdf`);
      expect(namesOf('{job}.{form}', { ...supper, job })[0]).toMatch(/^job-/);
      expect(namesOf('{job}x', { ...supper, job })[0]).not.toMatch(/^job-/);
    },
  );

  it('are never hidden and never read as an option', () => {
    expect(namesOf('.{job}', supper)).toEqual(['harvest-supper.pdf']);
    expect(namesOf('--{job}', supper)).toEqual(['harvest-supper.pdf']);
    expect(namesOf('{job}...', supper)).toEqual(['harvest-supper.pdf']);
  });

  it('cut the title and nothing else when they would grow too long', () => {
    const [name] = namesOf('{job}_{side}', { ...supper, job: 'x'.repeat(500) });
    expect(name).toBe(`${'x'.repeat(140 - '_both-sides.pdf'.length)}_both-sides.pdf`);
    const [twice] = namesOf('{job}_{job}', { ...supper, job: '収穫'.repeat(100) });
    expect(Buffer.byteLength(twice ?? '')).toBeLessThanOrEqual(140);
    expect(twice).toBe(`${'収穫'.repeat(11)}_${'収穫'.repeat(11)}.pdf`);
  });

  it('do not end in a hyphen where a title was cut', () => {
    const job = `${'x'.repeat(135)} ${'y'.repeat(50)}`;
    expect(namesOf('{job}', { ...supper, job })).toEqual([`${'x'.repeat(135)}.pdf`]);
  });

  it('are safe on Windows, macOS and Linux whatever the title and the pattern', () => {
    const patterns = fc.string({ unit: 'binary', maxLength: 60 }).map((s) => s.replace(/[{}/\\]/g, ''));
    const titles = fc.string({ unit: 'binary', maxLength: 300 });
    fc.assert(
      fc.property(patterns, titles, (pattern, job) => {
        const named = nameFiles(`${pattern}{job}`, [{ ...supper, job }]);
        if (!named.ok) return;
        const [name = ''] = named.value;
        expect(name).toMatch(/^[^<>:"/\\|?*\p{Cc}\s.-][^<>:"/\\|?*\p{Cc}\s]*\.pdf$/u);
        expect(Buffer.byteLength(name)).toBeLessThanOrEqual(144);
        expect(name).toBe(name.normalize('NFC'));
        expect(name).not.toMatch(/^(con|prn|aux|nul|com\d|lpt\d)\./i);
      }),
    );
  });
});

describe('a pattern for file names', () => {
  it('is refused when it asks for what there is not', () => {
    expect(refusalOf('{job}_{colour}', supper)).toBe(
      'The pattern for file names holds {colour}, which stands for nothing. Use {job}, {form}, {side}, {quantity}, {sheets}, {date}.',
    );
    expect(refusalOf('{toString}', supper)).toContain('{toString}');
    expect(refusalOf('{}', supper)).toContain('holds {}, which stands for nothing');
  });

  it('is refused when a brace stands alone', () => {
    expect(refusalOf('{job', supper)).toContain('holds a brace without its partner');
    expect(refusalOf('job}', supper)).toContain('holds a brace without its partner');
  });

  it('is refused when it names a folder', () => {
    expect(refusalOf('out/{job}', supper)).toContain('names a folder');
    expect(refusalOf('out\\{job}', supper)).toContain('names a folder');
  });

  it('is refused when it gives two files one name', () => {
    expect(refusalOf('{job}', sideOne, sideTwo)).toBe(
      'The pattern for file names calls two files harvest-supper.pdf. Add {form} or {side} to it.',
    );
  });

  it('is refused when it leaves no name or no room for one', () => {
    expect(refusalOf('...', supper)).toContain('leaves no room for a name');
    expect(refusalOf('.pdf', supper)).toContain('leaves no room for a name');
    expect(refusalOf('y'.repeat(137), supper)).toContain('leaves no room for a name');
    expect(namesOf('y'.repeat(136), supper)[0]).toHaveLength(140);
  });
});
