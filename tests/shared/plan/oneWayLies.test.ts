// Which ways to lie are offered besides the one that gives most: only those that the pieces may take and do not take already.
import { describe, expect, it } from 'vitest';
import { liesOnItsSide } from '../../../shared/geometry/head.ts';
import { layOutCandidates } from '../../../shared/plan/layOutCandidates.ts';
import { supperWith } from '../../kit/briefs.ts';
import { card, libraryWith, trayPrinter } from '../../kit/libraries.ts';
import { briefOf } from '../../kit/plans.ts';

const [tray] = trayPrinter.feeds;
const [sheet] = card.forms;

/** How pieces may lie that lie upright on the sheet, or on their side; one printed side of a sheet that leads by 11 in. */
const liesOffered = (lies: string, trim = '5 x 7 in') => {
  const written = supperWith({ work: 'simplex' }, { back: undefined, lies, trim });
  const printers = [{ ...trayPrinter, feeds: [{ ...tray, most: '11 x 17 in' }] }];
  return layOutCandidates(briefOf(written), libraryWith({ printers })).candidates.map((one) => ({
    lies: one.lies,
    onTheirSide: one.arrangement.filter(({ head }) => liesOnItsSide(head)).length,
    up: one.up,
  }));
};

describe('a piece that has to lie one way', () => {
  it('is offered in no other', () => {
    expect(liesOffered('upright')).toEqual([{ lies: 'either', onTheirSide: 0, up: 4 }]);
    // 7.25 in across leave room for one on its side, 17 in for three of 5.25 in.
    expect(liesOffered('on-its-side')).toEqual([{ lies: 'either', onTheirSide: 3, up: 3 }]);
  });
});

describe('a piece that may lie either way', () => {
  it('is offered in the way that gives most, and once more in the other', () => {
    expect(liesOffered('either')).toEqual([
      { lies: 'either', onTheirSide: 0, up: 4 },
      { lies: 'on-its-side', onTheirSide: 3, up: 3 },
    ]);
  });

  it('is not offered in a way in which it does not fit', () => {
    // 5 x 11 in stands two across; on its side 11 in are as wide as the sheet, which cannot be printed to its edges.
    expect(liesOffered('either', '5 x 11 in')).toEqual([{ lies: 'either', onTheirSide: 0, up: 2 }]);
  });
});

it('of two designs of which one has to stand upright, the other lies either way', () => {
  const [supper] = supperWith({}).pieces;
  const written = supperWith({
    work: 'simplex',
    pieces: [
      { ...supper, back: undefined, lies: 'upright' },
      { ...supper, back: undefined, name: 'Tag', trim: '4 x 6 in', lies: 'either' },
    ],
  });
  const { candidates } = layOutCandidates(
    briefOf(written),
    libraryWith({ papers: [{ ...card, forms: [{ ...sheet, size: '13 x 19 in' }] }] }),
  );
  expect(candidates.length).toBeGreaterThan(1);
  for (const { lies, arrangement } of candidates) {
    for (const { piece, head } of arrangement) {
      if (piece === 'Supper') expect(liesOnItsSide(head)).toBe(false);
      else if (lies !== 'either') expect(liesOnItsSide(head)).toBe(lies === 'on-its-side');
    }
  }
  // A way to lie is offered by itself only where the layout that gives most mixes it, or has all tags the other way.
  const [either] = candidates.filter(({ lies }) => lies === 'either');
  const tags = either?.arrangement.filter(({ piece }) => piece === 'Tag') ?? [];
  for (const one of candidates.filter(({ lies }) => lies !== 'either')) {
    expect(tags.every(({ head }) => liesOnItsSide(head) === (one.lies === 'on-its-side'))).toBe(false);
  }
});
