// A picture of printed areas: every card with its trim, its number and as far as its bleed is printed.
import type { Placed } from './staggered.ts';

type Box = Placed['trim'];

/** Fills by turns, so that neighbours differ. */
const TINTS = ['#f2b8a0', '#a9cfe8', '#c5dea4', '#e3c4e6', '#f3df98'] as const;
const MARGIN_PT = 12;

/** The picture as SVG, two pixels to the pt, y up as on the sheet. What is white within the frame stays paper. */
export function drawBleeds(placed: readonly Placed[], areas: readonly (readonly Box[])[]): string {
  const reached = placed.map(({ trim: { x, y, w, h }, bleed }) => ({
    left: x - bleed,
    right: x + w + bleed,
    bottom: y - bleed,
    top: y + h + bleed,
  }));
  const left = Math.min(...reached.map((r) => r.left)) - MARGIN_PT;
  const right = Math.max(...reached.map((r) => r.right)) + MARGIN_PT;
  const bottom = Math.min(...reached.map((r) => r.bottom)) - MARGIN_PT;
  const top = Math.max(...reached.map((r) => r.top)) + MARGIN_PT;
  const rect = ({ x, y, w, h }: Box, look: string) =>
    `<rect x="${short(x - left)}" y="${short(top - y - h)}" width="${short(w)}" height="${short(h)}" ${look}/>`;
  const cards = placed.flatMap(({ trim, bleed }, i) => [
    `<g><title>card ${i}, bleed ${bleed} pt</title>`,
    ...(areas[i] ?? []).map((area) => rect(area, `fill="${TINTS[i % TINTS.length]}"`)),
    '</g>',
    rect(trim, 'fill="none" stroke="#222" stroke-width="0.5"'),
    `<text x="${short(trim.x - left + 4)}" y="${short(top - trim.y - 5)}" font-size="9" font-family="sans-serif">${i}: ${bleed}</text>`,
  ]);
  const [width, height] = [right - left, top - bottom];
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${short(2 * width)}" height="${short(2 * height)}" viewBox="0 0 ${short(width)} ${short(height)}">`,
    '<title>How far the bleed of each card is printed: its number and its bleed in pt</title>',
    '<rect width="100%" height="100%" fill="#fff"/>',
    ...cards,
    '</svg>',
    '',
  ].join('\n');
}

/** To a thousandth of a pt: less than that is rounding. */
function short(length: number): string {
  return String(Math.round(length * 1000) / 1000);
}
