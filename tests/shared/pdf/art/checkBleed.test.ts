import { describe, expect, it } from 'vitest';
import type { Edges } from '../../../../shared/geometry/space.ts';
import type { ArtPage } from '../../../../shared/pdf/art/artPage.ts';
import { checkBleed } from '../../../../shared/pdf/art/checkBleed.ts';
import { FIT_TOLERANCE_PT } from '../../../../shared/pdf/art/fit.ts';
import { CARD, writePages } from '../../../kit/pdfs.ts';
import { opened } from '../../../kit/placed.ts';

async function page(): Promise<ArtPage> {
  const read = (await opened(writePages([{ media: CARD }]), { name: 'supper.pdf' })).page(1);
  if (!read.ok) throw new Error(read.fault.message);
  return read.value;
}

const check = async (reach: Partial<Edges>, bleed = 9) =>
  checkBleed(await page(), { left: 9, right: 9, top: 9, bottom: 9, ...reach }, bleed);

describe('the bleed of a page', () => {
  it('is enough when it is as long as the brief wants, or longer', async () => {
    expect(await check({})).toEqual({ ok: true, value: { left: 9, right: 9, top: 9, bottom: 9 } });
    expect((await check({ left: 500 })).ok).toBe(true);
    expect((await check({ left: 0, right: 0, top: 0, bottom: 0 }, 0)).ok).toBe(true);
  });

  it('may fall short by a quarter of a millimetre and no more', async () => {
    for (const edge of ['left', 'right', 'top', 'bottom'] as const) {
      expect((await check({ [edge]: 9 - FIT_TOLERANCE_PT + 0.001 })).ok).toBe(true);
      expect((await check({ [edge]: 9 - FIT_TOLERANCE_PT - 0.001 })).ok).toBe(false);
    }
  });

  it('is said to be none where the art ends at the trim', async () => {
    expect(await check({ left: 0, right: 0, top: 0, bottom: 0 })).toEqual({
      ok: false,
      fault: {
        code: 'art-bleed-short',
        message:
          'There is no bleed on page 1 of supper.pdf: it ends at the trim. The brief wants 0.125 in (3.18 mm) on every side.',
        remedy:
          'Export the page again with 0.125 in (3.18 mm) of bleed, or write a smaller "bleed" in the brief.',
        where: 'supper.pdf',
      },
    });
    const nearly = await check({
      left: FIT_TOLERANCE_PT,
      right: FIT_TOLERANCE_PT,
      top: -1,
      bottom: FIT_TOLERANCE_PT,
    });
    expect(nearly).toMatchObject({ fault: { message: expect.stringContaining('There is no bleed') } });
  });

  it('is measured on each edge where it is short', async () => {
    const message = async (reach: Partial<Edges>) => {
      const checked = await check(reach);
      return checked.ok ? '' : checked.fault.message;
    };
    expect(await message({ top: 4.5, left: -3 })).toBe(
      'The bleed of page 1 of supper.pdf is too short: 0 in (0 mm) at the left, 0.063 in (1.59 mm) at the head. The brief wants 0.125 in (3.18 mm) on every side.',
    );
    expect(await message({ right: 0, bottom: 3 })).toBe(
      'The bleed of page 1 of supper.pdf is too short: 0 in (0 mm) at the right, 0.042 in (1.06 mm) at the foot. The brief wants 0.125 in (3.18 mm) on every side.',
    );
    expect(await message({ left: 1, right: 1, top: 1, bottom: 1 })).toContain('too short: 0.014 in');
  });
});
