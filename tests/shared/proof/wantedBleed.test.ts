import { describe, expect, it } from 'vitest';
import { wantedBleed } from '../../../shared/proof/wantedBleed.ts';

const SHEET = { w: 500, h: 700 };
const at = (x: number, y: number, w = 100, h = 60, bleed = 9) => ({ trim: { x, y, w, h }, bleed });

describe('The bleed that must be seen', () => {
  const one = at(200, 300);
  const all = { left: 9, right: 9, top: 9, bottom: 9 };

  it('is the whole bleed of a piece that lies alone', () => {
    expect(wantedBleed(one, [], SHEET)).toEqual(all);
  });

  it('ends at the edge of the sheet', () => {
    expect(wantedBleed(at(4, 300), [], SHEET)).toEqual({ ...all, left: 4 });
    expect(wantedBleed(at(395, 300), [], SHEET)).toEqual({ ...all, right: 5 });
    expect(wantedBleed(at(200, 3), [], SHEET)).toEqual({ ...all, bottom: 3 });
    expect(wantedBleed(at(200, 638), [], SHEET)).toEqual({ ...all, top: 2 });
    expect(wantedBleed(at(-2, 300), [], SHEET)).toEqual({ ...all, left: 0 });
    expect(wantedBleed(at(200, 642), [], SHEET)).toEqual({ ...all, top: 0 });
    expect(wantedBleed(at(402, 300), [], SHEET)).toEqual({ ...all, right: 0 });
    expect(wantedBleed(at(200, -1), [], SHEET)).toEqual({ ...all, bottom: 0 });
  });

  it('ends in the middle of a gutter too narrow for two bleeds', () => {
    expect(wantedBleed(one, [at(310, 300)], SHEET)).toEqual({ ...all, right: 5 });
    expect(wantedBleed(one, [at(86, 300)], SHEET)).toEqual({ ...all, left: 7 });
    expect(wantedBleed(one, [at(200, 372)], SHEET)).toEqual({ ...all, top: 6 });
    expect(wantedBleed(one, [at(200, 232)], SHEET)).toEqual({ ...all, bottom: 4 });
  });

  it('is none where two pieces share a cut', () => {
    expect(wantedBleed(one, [at(300, 300)], SHEET)).toEqual({ ...all, right: 0 });
  });

  it('is whole where the gutter has room for both bleeds', () => {
    expect(wantedBleed(one, [at(318, 300)], SHEET)).toEqual(all);
    expect(wantedBleed(one, [at(314, 300, 100, 60, 4)], SHEET)).toEqual(all);
  });

  it('is not limited by a piece that lies farther along', () => {
    expect(wantedBleed(one, [at(310, 400)], SHEET)).toEqual(all);
    expect(wantedBleed(one, [at(40, 300)], SHEET)).toEqual(all);
  });

  it('is limited on both edges towards a neighbour across the corner', () => {
    expect(wantedBleed(one, [at(310, 372)], SHEET)).toEqual({ ...all, right: 5, top: 6 });
  });
});
