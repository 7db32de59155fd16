import { mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { decode } from 'fast-png';
import { describe, expect, it } from 'vitest';
import { type ProofPicture, writePictures } from '../../../electron/proof/pictures.ts';
import { proveSheets } from '../../../electron/proof/proveSheets.ts';
import { HEADS, type Head, type ReaderTurn } from '../../../shared/geometry/head.ts';
import type { Turn } from '../../../shared/geometry/turn.ts';
import type { FaceName, Position } from '../../../shared/layout/position.ts';
import { testFolder } from '../../kit/folder.ts';
import { type Picture, picturesByPoppler } from '../../kit/poppler.ts';
import { lopsided, openShop, printSides, type Shop } from '../../kit/printShop.ts';

/** A size of whole pixels at 150 to the inch: 250 by 150. */
const [W, H] = [120, 72];
const SHEET = { w: 432, h: 360 };
const DPI = 150;

function at(piece: string, x: number, y: number, head: Head, face: FaceName = 'front'): Position {
  const lies = head === 90 || head === 270;
  return { piece, face, head, trim: { x, y, w: lies ? H : W, h: lies ? W : H } };
}

const card = (name: string, turned: ReaderTurn) => ({
  name,
  w: W,
  h: H,
  bleed: 9,
  turned,
  front: lopsided(name, [0.9, 0.8, 0.6]),
  back: lopsided('Back', [0.6, 0.8, 0.9]),
});

const POSITIONS = [
  at('Supper', 24, 48, 0),
  at('Supper', 24, 168, 90, 'back'),
  at('Supper', 240, 48, 180),
  at('Supper', 240, 168, 270),
];

async function picturesOf(
  shop: Shop,
): Promise<{ sides: readonly Uint8Array[]; pictures: readonly ProofPicture[] }> {
  const { side1, side2 } = await printSides(shop);
  const sheets = { side1: { bytes: side1, page: 1 }, side2: { bytes: side2, page: 1 } };
  const result = await proveSheets(shop.job, sheets, shop.art, { pictures: true, dpi: DPI });
  if (!result.ok) throw new Error(result.fault.message);
  expect(result.value.findings).toEqual([]);
  return { sides: [side1, side2], pictures: result.value.pictures };
}

/** The faces in a picture of a pair, each without its ground. */
function facesIn({ png }: ProofPicture): readonly Picture[] {
  const { width, height, data } = decode(png);
  const pixels = Uint8Array.from(data);
  const ground = Math.round(150 * 0.04);
  expect([width, height]).toEqual([2 * 250 + 3 * ground, 150 + 2 * ground]);
  return [ground, 2 * ground + 250].map((left) => {
    const face = new Uint8Array(250 * 150 * 3);
    for (let row = 0; row < 150; row++) {
      const from = ((row + ground) * width + left) * 3;
      face.set(pixels.subarray(from, from + 750), row * 750);
    }
    return { width: 250, height: 150, pixels: face };
  });
}

describe('Pictures of the pieces', () => {
  /**
   * What poppler sees at a point of a face in the hand. The point is carried back to the paper by turning it in space:
   * about the head-foot or side-side axis if it is on the back of what side 1 shows, by the head, into its trim; and
   * on to side 2 by the turn of the sheet.
   */
  function seenByPoppler(
    sides: readonly Picture[],
    { head, trim }: Position,
    behind: boolean,
    turn: Turn,
    readerTurn: ReaderTurn,
    u: number,
    v: number,
  ): readonly number[] {
    let [x, y] = [u - W / 2, v - H / 2];
    if (behind) [x, y] = readerTurn === 'head-to-head' ? [-x, y] : [x, -y];
    const angle = (head * Math.PI) / 180;
    [x, y] = [x * Math.cos(angle) - y * Math.sin(angle), x * Math.sin(angle) + y * Math.cos(angle)];
    [x, y] = [x + trim.x + trim.w / 2, y + trim.y + trim.h / 2];
    if (behind) [x, y] = turn === 'side-to-side' ? [SHEET.w - x, y] : [x, SHEET.h - y];
    const side = sides[behind ? 1 : 0]!;
    const column = Math.floor((x * DPI) / 72);
    const row = side.height - 1 - Math.floor((y * DPI) / 72);
    const from = (row * side.width + column) * 3;
    return [...side.pixels.subarray(from, from + 3)];
  }

  for (const turn of ['side-to-side', 'end-to-end'] as const) {
    for (const readerTurn of ['head-to-head', 'head-to-toe'] as const) {
      it(`show what poppler shows of paper turned in space: ${turn}, ${readerTurn}`, async () => {
        const shop = await openShop(SHEET, turn, POSITIONS, [card('Supper', readerTurn)]);
        const { sides, pictures } = await picturesOf(shop);
        const byPoppler = sides.map((side) => picturesByPoppler(side, DPI / 72)[0]!);
        expect(pictures).toHaveLength(HEADS.length);
        for (const [i, picture] of pictures.entries()) {
          const position = POSITIONS[i]!;
          for (const [f, face] of facesIn(picture).entries()) {
            const behind = (f === 1) === (position.face === 'front');
            const unlikeness = (read: ReaderTurn) => {
              let [unlike, all] = [0, 0];
              for (let row = 0; row < face.height; row += 3) {
                for (let column = 0; column < face.width; column += 3) {
                  const [u, v] = [((column + 0.5) * 72) / DPI, ((face.height - row - 0.5) * 72) / DPI];
                  const seen = seenByPoppler(byPoppler, position, behind, turn, read, u, v);
                  const from = (row * face.width + column) * 3;
                  if (seen.some((value, c) => Math.abs(value - face.pixels[from + c]!) > 40)) unlike += 1;
                  all += 1;
                }
              }
              return unlike / all;
            };
            // Renderers draw edges and choose fonts each in its own way.
            expect(unlikeness(readerTurn)).toBeLessThan(0.04);
            const other = readerTurn === 'head-to-head' ? 'head-to-toe' : 'head-to-head';
            if (behind) expect(unlikeness(other)).toBeGreaterThan(0.15);
          }
        }
      });
    }
  }

  it('are named by position, piece and faces', async () => {
    const pieces = [card('Fête № 2, «Été»!', 'head-to-head'), card('晩餐', 'head-to-head')];
    const positions = [at(pieces[0]!.name, 24, 48, 0), at(pieces[1]!.name, 240, 48, 0, 'back')];
    const { pictures } = await picturesOf(
      await openShop(
        SHEET,
        'side-to-side',
        positions,
        pieces.map((p) => ({ ...p, front: lopsided('A', [1, 1, 1]) })),
      ),
    );
    expect(pictures.map(({ position, name }) => [position, name])).toEqual([
      [1, '01-fete-no-2-ete-front-back.png'],
      [2, '02-piece-front-back.png'],
    ]);
  });

  it('show the one face of a piece that is printed on one side', async () => {
    const { back: _, ...single } = card('Tag', 'head-to-head');
    const shop = await openShop(SHEET, undefined, [at('Tag', 24, 48, 90)], [single]);
    const { side1 } = await printSides(shop);
    const result = await proveSheets(shop.job, { side1: { bytes: side1, page: 1 } }, shop.art, {
      pictures: true,
    });
    expect(result.ok && result.value.pictures.map(({ name }) => name)).toEqual(['01-tag-front.png']);
  });

  it('are only made when they are wanted', async () => {
    const shop = await openShop(SHEET, 'side-to-side', POSITIONS.slice(0, 1), [
      card('Supper', 'head-to-head'),
    ]);
    const { side1, side2 } = await printSides(shop);
    const result = await proveSheets(
      shop.job,
      { side1: { bytes: side1, page: 1 }, side2: { bytes: side2, page: 1 } },
      shop.art,
    );
    expect(result.ok && result.value.pictures).toEqual([]);
  });
});

describe('Pictures in a folder', () => {
  const folder = testFolder();
  const picture = (name: string, ...png: readonly number[]): ProofPicture => ({
    position: 1,
    name,
    png: Uint8Array.from(png),
  });

  it('are written whole, into a folder that is made for them', async () => {
    const path = join(folder.path, 'proof', 'pictures');
    const written = await writePictures(
      [picture('01-a-front.png', 1, 2), picture('02-b-front.png', 3)],
      path,
    );
    const paths = [join(path, '01-a-front.png'), join(path, '02-b-front.png')];
    expect(written).toEqual({ ok: true, value: paths });
    expect(readdirSync(path)).toEqual(['01-a-front.png', '02-b-front.png']);
    expect([...readFileSync(paths[0]!)]).toEqual([1, 2]);
  });

  it('replace those of an earlier proof', async () => {
    const path = join(folder.path, 'again');
    await writePictures([picture('01-a-front.png', 1, 2)], path);
    await writePictures([picture('01-a-front.png', 9)], path);
    expect([...readFileSync(join(path, '01-a-front.png'))]).toEqual([9]);
  });

  it('are refused in words where they cannot be written', async () => {
    const file = folder.save('not-a-folder', 'text');
    expect(await writePictures([picture('01-a-front.png', 1)], file)).toMatchObject({
      ok: false,
      fault: { where: file },
    });
    const path = join(folder.path, 'taken');
    mkdirSync(join(path, '01-a-front.png'), { recursive: true });
    const refused = await writePictures([picture('01-a-front.png', 1)], path);
    expect(refused).toMatchObject({ ok: false, fault: { where: join(path, '01-a-front.png') } });
    expect(readdirSync(path)).toEqual(['01-a-front.png']);
  });
});
