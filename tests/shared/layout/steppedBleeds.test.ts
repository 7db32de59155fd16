// A picture that a person can look at: steppedBleeds.svg, beside this file (`npx vitest run steppedBleeds -u` draws it anew).
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { bleedAreas } from '../../../shared/layout/bleeds.ts';
import { drawBleeds } from '../../kit/drawnBleeds.ts';
import type { Placed } from '../../kit/staggered.ts';

const PICTURE = fileURLToPath(new URL('steppedBleeds.svg', import.meta.url));

const card = (x: number, y: number, w: number, h: number, bleed = 9): Placed => ({
  trim: { x, y, w, h },
  bleed,
});

/** Rows out of step: gutters of 0, 4, 6, 12 and 20 pt, bleeds of 9, 4 and 0 pt, a card alone, a corner that is open. */
const STAGGERED: readonly Placed[] = [
  card(0, 0, 90, 60),
  card(96, 0, 60, 60),
  card(160, 0, 80, 54, 4),
  card(260, 0, 60, 60),
  card(-20, 64, 70, 50),
  card(50, 64, 70, 50),
  card(132, 66, 70, 48, 0),
  card(208, 66, 46, 48),
  card(20, 126, 100, 40),
  card(126, 118, 40, 48),
  card(172, 130, 82, 36),
];

it('The bleeds of a staggered sheet are printed as in the picture: to the middle of each gutter, with steps, and nothing white within a bleed', async () => {
  const wasThere = existsSync(PICTURE);
  await expect(drawBleeds(STAGGERED, bleedAreas<'side1'>(STAGGERED))).toMatchFileSnapshot(PICTURE);
  expect(wasThere, 'the picture is kept beside its test').toBe(true);
});
