// What a proof has drawn: a page of a sheet once, a face once for each way it lies, whatever the number of placements.
import { afterEach, describe, expect, it, vi } from 'vitest';
import { proveSheets } from '../../../electron/proof/proveSheets.ts';
import { type OpenPage, Renderer } from '../../../electron/proof/renderer.ts';
import type { Size } from '../../../shared/geometry/space.ts';
import type { Position } from '../../../shared/layout/position.ts';
import { lopsided, openShop, printSides, type Spoils } from '../../kit/printShop.ts';

const [W, H, BLEED] = [90.3, 60.7, 6];

afterEach(() => {
  vi.restoreAllMocks();
});

/** Counts every drawing and every render that is asked of any renderer. */
function watchRenderer(): { drawn: number; rendered: number } {
  const counts = { drawn: 0, rendered: 0 };
  const { open } = Renderer.prototype;
  const watched = new Map<OpenPage, OpenPage>();
  const watch = (page: OpenPage): OpenPage => ({
    ...page,
    source: {
      size: page.source.size,
      rasterise: (...asked) => {
        counts.drawn++;
        return page.source.rasterise(...asked);
      },
      render: (...asked) => {
        counts.rendered++;
        return page.source.render(...asked);
      },
    },
  });
  vi.spyOn(Renderer.prototype, 'open').mockImplementation(function (this: Renderer, bytes) {
    const document = open.call(this, bytes);
    if (typeof document === 'string') return document;
    return {
      ...document,
      page: (number) => {
        const page = document.page(number);
        if (page !== undefined && !watched.has(page)) watched.set(page, watch(page));
        return page && watched.get(page);
      },
    };
  });
  return counts;
}

/** Proves so many cards in rows of four, turned side to side, and counts. */
async function countFor(up: number, spoils: Spoils = () => ({})) {
  const positions = Array.from({ length: up }, (_, i): Position => {
    const [column, row] = [i % 4, Math.floor(i / 4)];
    const trim = { x: 20.4 + column * 103.37, y: 19.1 + row * 74.9, w: W, h: H };
    return { piece: 'Supper', face: 'front', head: 0, trim };
  });
  return countOf({ w: 450.2, h: 40 + 75 * Math.ceil(up / 4) }, positions, spoils, false);
}

async function countOf(sheet: Size, positions: readonly Position[], spoils: Spoils, oneForm: boolean) {
  const shop = await openShop(sheet, 'side-to-side', positions, [
    {
      name: 'Supper',
      w: W,
      h: H,
      bleed: BLEED,
      turned: 'head-to-head',
      front: lopsided('Supper', [0.9, 0.8, 0.6]),
      back: lopsided('Programme', [0.6, 0.8, 0.9]),
    },
  ]);
  const { side1, side2 } = await printSides(shop, spoils);
  const counts = watchRenderer();
  const sides = { side1: { bytes: side1, page: 1 }, side2: { bytes: oneForm ? side1 : side2, page: 1 } };
  const proof = await proveSheets(shop.job, sides, shop.art, { pictures: true });
  if (!proof.ok) throw new Error(proof.fault.message);
  vi.restoreAllMocks();
  return { ...counts, findings: proof.value.findings.length, checked: proof.value.checked };
}

describe('A proof of right sheets', () => {
  it('draws two sides and two faces, for one card as for twenty-four', async () => {
    const once = { drawn: 4, rendered: 0, findings: 0 };
    expect(await countFor(1)).toEqual({ ...once, checked: 2 });
    expect(await countFor(24)).toEqual({ ...once, checked: 48 });
  });
});

describe('A proof of a form that serves both sides', () => {
  it('draws it once', async () => {
    const positions = (['front', 'back'] as const).map((face, i): Position => {
      return { piece: 'Supper', face, head: 0, trim: { x: 20.4 + i * 103.37, y: 19.1, w: W, h: H } };
    });
    expect(await countOf({ w: 2 * 20.4 + 103.37 + W, h: 100 }, positions, () => ({}), true)).toEqual({
      drawn: 3,
      rendered: 0,
      findings: 0,
      checked: 4,
    });
  });
});

describe('A proof of a sheet with one wrong card', () => {
  it('renders that one alone', async () => {
    const spoiled: Spoils = (position, side) => (position === 7 && side === 2 ? { turned: 180 } : {});
    const { rendered, findings } = await countFor(24, spoiled);
    expect(findings).toBe(1);
    expect(rendered).toBeGreaterThan(0);
    expect(rendered).toBeLessThan(12);
  });
});
