// Which way the type on a page of the art runs, read from the page itself.
import type { TypeRun } from '../../shared/bench/typeStands.ts';
import type { ReadPage } from './artReading.ts';

/** The runs of type on a page as it is viewed, before the brief turns it. */
export async function typeOnPage({ page, drawable }: ReadPage): Promise<readonly TypeRun[]> {
  const { toArt } = page;
  const { items } = await drawable.getTextContent();
  return items.flatMap((item) => {
    if (!('transform' in item) || item.str.trim() === '') return [];
    const [a, b] = item.transform as [number, number];
    const angle = Math.atan2(toArt.b * a + toArt.d * b, toArt.a * a + toArt.c * b);
    return [{ letters: item.str.replace(/\s/g, '').length, angle: (angle * 180) / Math.PI }];
  });
}
