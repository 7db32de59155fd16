import { describe, expect, it } from 'vitest';
import { readBrief } from '../../../shared/job/readBrief.ts';
import { points } from '../../../shared/units/length.ts';
import { supperBrief, supperWith } from '../../kit/briefs.ts';

function read(written: unknown) {
  const brief = readBrief(written);
  if (!brief.ok) throw new Error(brief.fault.message);
  return brief.value;
}

function refusal(written: unknown) {
  const brief = readBrief(written);
  if (brief.ok) throw new Error('The brief was taken');
  return brief.fault;
}

describe('reading a brief', () => {
  it('takes the lengths in the brief’s own unit', () => {
    const brief = read(supperBrief);
    expect(brief.sheet.size.map(points)).toEqual([792, 1224]);
    expect(points(brief.gutter)).toBe(18);
    expect(brief.pieces[0]?.trim.map(points)).toEqual([360, 504]);
    expect(brief.work).toEqual({ style: 'work-and-turn' });
  });

  it('takes lengths and sizes in any unit, and keeps them as typed', () => {
    const brief = read(
      supperWith({ gutter: '6 mm' }, { trim: '5x7in', bleed: '1/8' }, { size: ['330 mm', '480 mm'] }),
    );
    expect(brief.gutter.typed).toBe('6 mm');
    expect(brief.pieces[0]?.bleed.typed).toBe('1/8 in');
    expect(brief.pieces[0]?.trim.map((l) => l.typed)).toEqual(['5 in', '7in']);
    expect(brief.sheet.size.map((l) => l.typed)).toEqual(['330 mm', '480 mm']);
  });

  it('fills in what a person may leave out', () => {
    const brief = read({
      units: 'mm',
      title: 'Tags',
      sheet: { size: [320, 450] },
      work: 'work-and-back',
      pieces: [{ name: 'Tag', trim: [50, 90], bleed: 3, quantity: 10, front: { file: 'tag.pdf' } }],
    });
    expect(brief).toMatchObject({
      work: { style: 'work-and-back', turn: 'side-to-side' },
      gutter: { amount: 6, unit: 'mm' },
      centring: { across: 'centre', along: 'centre' },
      marks: true,
      overs: { percent: 5, least: 3 },
      sheet: {
        sidesAlike: true,
        hold: { across: 'left', along: 'lead' },
        unprintable: { lead: { amount: 0 } },
      },
    });
    expect(brief.pieces[0]).toMatchObject({
      safe: { amount: 3, unit: 'mm' },
      turned: 'head-to-head',
      lies: 'either',
      front: { file: 'tag.pdf', page: 1, rotate: 0 },
    });
    expect(brief.pieces[0]?.back).toBeUndefined();
  });

  it('lays the wished edge first into the printer', () => {
    expect(read(supperWith({ lead: 'long' })).sheet.size.map(points)).toEqual([1224, 792]);
    expect(read(supperWith({ lead: 'short' })).sheet.size.map(points)).toEqual([792, 1224]);
    expect(read(supperWith({ lead: 'short' }, {}, { size: [17, 11] })).sheet.size.map(points)).toEqual([
      792, 1224,
    ]);
    expect(read(supperWith({ lead: 'long' }, {}, { size: [17, 11] })).sheet.size.map(points)).toEqual([
      1224, 792,
    ]);
    expect(read(supperWith({}, {}, { size: [17, 11] })).sheet.size.map(points)).toEqual([1224, 792]);
    expect(read(supperWith({ lead: 'long' }, {}, { size: [17, 17] })).sheet.size.map(points)).toEqual([
      1224, 1224,
    ]);
  });

  it('reads where the trim lies on a page, which may be outside the origin', () => {
    const brief = read(
      supperWith({}, { front: { file: 'a.pdf', page: 3, rotate: 90, trimAt: ['-1 mm', 0.5] } }),
    );
    expect(brief.pieces[0]?.front).toMatchObject({
      page: 3,
      rotate: 90,
      trimAt: [{ typed: '-1 mm' }, { amount: 0.5 }],
    });
  });
});

describe('a brief that cannot be used', () => {
  it.each([
    ['a missing title', supperWith({ title: undefined }), 'title: is missing'],
    ['an empty title', supperWith({ title: '  ' }), 'title: must not be empty'],
    ['unknown units', supperWith({ units: 'cm' }), 'units: must be one of "in", "mm", "pt"'],
    ['an unknown style', supperWith({ work: 'work-and-twist' }), 'work: must be one of'],
    ['a slip of the pen', supperWith({ gutters: 1 }), 'the brief: has no field "gutters"'],
    ['a slip in a piece', supperWith({}, { quantitiy: 3 }), 'pieces[0]: has no field "quantitiy"'],
    ['no pieces', supperWith({ pieces: [] }), 'pieces: must hold at least one piece'],
    [
      'half a card',
      supperWith({}, { quantity: 0.5 }),
      'pieces[0].quantity: must be a whole number of at least 1',
    ],
    ['no cards', supperWith({}, { quantity: 0 }), 'pieces[0].quantity: must be at least 1'],
    [
      'far too many cards',
      supperWith({}, { quantity: 1e9 }),
      'pieces[0].quantity: must be at most ten million',
    ],
    ['no size', supperWith({}, { trim: undefined }), 'pieces[0].trim: is missing'],
    [
      'half a size',
      supperWith({}, { trim: [5] }),
      'pieces[0].trim: must be [width, height] or a text such as "5 x 7 in"',
    ],
    [
      'an unreadable size',
      supperWith({}, { trim: 'large' }),
      'pieces[0].trim: "large" is not a width and a height.',
    ],
    ['an unreadable length', supperWith({ gutter: 'wide' }), 'gutter: "wide" is not a length.'],
    ['a unit nobody has', supperWith({}, { bleed: '1 cm' }), 'pieces[0].bleed: "1 cm" is in "cm"'],
    [
      'a negative bleed',
      supperWith({}, { bleed: -0.1 }),
      'pieces[0].bleed: must not be negative, not -0.1 in',
    ],
    [
      'a card of no width',
      supperWith({}, { trim: [0, 7] }),
      'pieces[0].trim[0]: must be longer than nothing, not 0 in',
    ],
    [
      'a sheet of no length',
      supperWith({}, {}, { size: '11 x 0 in' }),
      'sheet.size: must be longer than nothing, not 0 in',
    ],
    [
      'a sheet of a mile',
      supperWith({}, {}, { size: [11, 63360] }),
      'sheet.size[1]: 63360 in is longer than anything that is printed here (5 m)',
    ],
    [
      'a slipped unit',
      supperWith({}, {}, { unprintable: { lead: 5001 } }),
      'sheet.unprintable.lead: 5001 in is longer than',
    ],
    [
      'a head at an angle',
      supperWith({}, { front: { file: 'a.pdf', rotate: 45 } }),
      'pieces[0].front.rotate: must be 0, 90, 180 or 270',
    ],
    [
      'page nought',
      supperWith({}, { front: { file: 'a.pdf', page: 0 } }),
      'pieces[0].front.page: must be at least 1',
    ],
    ['negative overs', supperWith({ overs: { percent: -1 } }), 'overs.percent: must not be negative'],
    ['marks that are maybe', supperWith({ marks: 'maybe' }), 'marks: must be true or false'],
    ['no object at all', [1, 2], 'the brief: '],
  ])('says so: %s', (_what, written, says) => {
    const fault = refusal(written);
    expect(fault.code).toBe('brief-invalid');
    expect(fault.message).toContain('The brief cannot be used. ');
    expect(fault.message).toContain(says);
    expect(fault.remedy).toContain('in the brief and try again.');
  });

  it('names the first field that is wrong, says three and counts the rest', () => {
    const fault = refusal(
      supperWith({ gutter: 'x', overs: { percent: 1 } }, { bleed: 'x', trim: ['x', 'y'] }),
    );
    expect(fault.where).toBe('pieces[0].bleed');
    expect(fault.message).toMatch(/pieces\[0\]\.trim\[1\]: .*; and 1 more\.$/);
    expect(fault.remedy).toBe('Correct these fields in the brief and try again.');
  });

  it('refuses one form on paper whose sides are not alike, and says what to take', () => {
    const fault = refusal(supperWith({}, {}, { sidesAlike: false }));
    expect(fault.where).toBe('work');
    expect(fault.message).toContain('the two sides of this paper are not alike; take work-and-back');
    expect(read(supperWith({ work: 'work-and-back' }, {}, { sidesAlike: false })).sheet.sidesAlike).toBe(
      false,
    );
  });

  it('refuses one form that is not centred on the edges that register', () => {
    expect(refusal(supperWith({ centring: { across: 'left' } })).where).toBe('centring.across');
    expect(refusal(supperWith({ work: 'work-and-tumble', centring: { along: 'lead' } })).where).toBe(
      'centring.along',
    );
    expect(read(supperWith({ centring: { along: 'lead' } })).centring.along).toBe('lead');
    expect(read(supperWith({ work: 'work-and-tumble', centring: { across: 'left' } })).centring.across).toBe(
      'left',
    );
  });

  it('refuses one form for a piece without a back', () => {
    const fault = refusal(supperWith({}, { back: undefined }));
    expect(fault.where).toBe('pieces[0].back');
    expect(fault.message).toContain('"Supper" has no back; take simplex or work-and-back');
  });

  it('refuses a turn that the style does not have', () => {
    expect(refusal(supperWith({ turn: 'end-to-end' })).message).toContain(
      'turn: work-and-turn is always turned side-to-side',
    );
    expect(refusal(supperWith({ work: 'simplex', turn: 'end-to-end' })).message).toContain(
      'turn: simplex is not turned',
    );
    expect(read(supperWith({ turn: 'side-to-side' })).work).toEqual({ style: 'work-and-turn' });
    expect(read(supperWith({ work: 'perfecting', turn: 'end-to-end' })).work).toEqual({
      style: 'perfecting',
      turn: 'end-to-end',
    });
  });

  it('refuses two pieces of one name', () => {
    const [piece] = supperBrief.pieces;
    const fault = refusal(supperWith({ pieces: [piece, piece] }));
    expect(fault.message).toContain('pieces[1].name: "Supper" is the name of another piece');
    expect(fault.where).toBe('pieces[1].name');
  });
});
