// The ink of pages whose ink is known by hand. Ghostscript 10's ink_cov device, which had no part in this, gives the same
// amounts for all pages here that hold inks.
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { measureFace } from '../../../electron/coverage/measureFace.ts';
import { Renderer } from '../../../electron/proof/renderer.ts';
import type { Head } from '../../../shared/geometry/head.ts';
import type { Rect } from '../../../shared/geometry/space.ts';
import type { FaceCoverage } from '../../../shared/ink/coverage.ts';
import { openArt } from '../../../shared/pdf/art/openArt.ts';
import {
  INKED_JPEG,
  type InkedPage,
  PAGE,
  pictured,
  pictureOf,
  specialInk,
  writeInked,
} from '../../kit/inkedPages.ts';
import { pack, writePages } from '../../kit/pdfs.ts';

let renderer: Renderer;
beforeAll(async () => {
  renderer = await Renderer.start();
});
afterAll(() => renderer.close());

const WHOLE = { x: 0, y: 0, ...PAGE } as Rect<'art'>;

async function measured(bytes: Uint8Array, box = WHOLE, rotate: Head = 0): Promise<FaceCoverage> {
  const art = await openArt(bytes, { name: 'card.pdf' });
  if (!art.ok) throw new Error(art.fault.message);
  const found = await measureFace(renderer, { art: art.value, page: 1, rotate, box });
  if (!found.ok) throw new Error(found.fault.message);
  return found.value;
}

const measure = (page: InkedPage) => measured(writeInked(page));

/** Within one in a hundred of a whole covering. */
function expectInks({ cmyk }: FaceCoverage, wanted: readonly number[]): void {
  wanted.forEach((amount, ink) => {
    expect(Math.abs((cmyk[ink] ?? Number.NaN) - amount), `ink ${ink + 1}: ${cmyk[ink]}`).toBeLessThan(0.01);
  });
}

const checkerboard = (across: number, up: number) =>
  Array.from({ length: across * up }, (_, i) => i)
    .filter((i) => ((i % across) + Math.floor(i / across)) % 2 === 0)
    .map((i) => `${(i % across) * 9} ${Math.floor(i / across) * 9} 9 9 re f`)
    .join(' ');

describe('The inks of a page', () => {
  it.each<[string, InkedPage, readonly number[]]>([
    ['nothing', { drawing: '' }, [0, 0, 0, 0]],
    ['a flat tint of black', { drawing: '0 0 0 0.4 k 0 0 144 108 re f' }, [0, 0, 0, 0.4]],
    [
      'half a page of two inks, and a quarter of black that is called a grey',
      { drawing: '1 0.5 0 0 k 0 0 72 108 re f 0 g 72 0 36 108 re f' },
      [0.5, 0.25, 0, 0.25],
    ],
    ['black that no operator has set', { drawing: '0 0 72 54 re f' }, [0, 0, 0, 0.25]],
    ['black beside an ink', { drawing: '0 0 72 54 re f 1 0 0 0 k 72 54 72 54 re f' }, [0.25, 0, 0, 0.25]],
    ['a stroke', { drawing: '0 1 0 0 K 54 w 0 54 m 144 54 l S' }, [0, 0.5, 0, 0]],
    ['a checkerboard', { drawing: `0 0 1 0 k ${checkerboard(16, 12)}` }, [0, 0, 0.5, 0]],
    [
      'the black that a space of four inks begins with, and a colour of it',
      { drawing: '/DeviceCMYK cs 0 0 144 54 re f 0.2 0.4 0.6 0 sc 0 54 144 54 re f' },
      [0.1, 0.2, 0.3, 0.5],
    ],
    [
      'inks that a profile tells',
      {
        drawing: '/Inks cs 0.5 0.25 0 0.1 scn 0 0 144 108 re f',
        resources: '/ColorSpace << /Inks [/ICCBased 3 0 R] >>',
        objects: { 3: pack('a profile', '/N 4 /Alternate /DeviceCMYK') },
      },
      [0.5, 0.25, 0, 0.1],
    ],
    [
      'a gradient',
      {
        drawing: '/Sweep sh',
        resources:
          '/Shading << /Sweep << /ShadingType 2 /ColorSpace /DeviceCMYK /Coords [0 0 144 0] /Function << /FunctionType 2 /Domain [0 1] /C0 [0 0 0 0] /C1 [1 0.5 0 0] /N 1 >> >> >>',
      },
      [0.5, 0.25, 0, 0],
    ],
    [
      'half as much ink where it lets half of the paper through',
      {
        drawing: '/Half gs 1 0 0 0 k 0 0 144 108 re f',
        resources: '/ExtGState << /Half << /ca 0.5 >> >>',
      },
      [0.5, 0, 0, 0],
    ],
    [
      'a form that goes on with the ink in use',
      {
        drawing: '1 0 0 0 k /Card Do',
        resources: '/XObject << /Card 3 0 R >>',
        objects: {
          3: pack(
            '0 0 72 108 re f 0 0 0 1 k 72 0 72 54 re f',
            '/Type /XObject /Subtype /Form /BBox [0 0 144 108] /Group << /S /Transparency /CS /DeviceCMYK >>',
          ),
        },
      },
      [0.5, 0, 0, 0.25],
    ],
    [
      'a pattern',
      {
        drawing: '/Pattern cs /Dots scn 0 0 144 108 re f',
        resources: '/Pattern << /Dots 3 0 R >>',
        objects: {
          3: pack(
            '0 0 0 1 k 0 0 6 12 re f 0 1 0 0 k 6 0 6 6 re f',
            '/Type /Pattern /PatternType 1 /PaintType 1 /TilingType 1 /BBox [0 0 12 12] /XStep 12 /YStep 12 /Resources << >>',
          ),
        },
      },
      [0, 0.25, 0, 0.5],
    ],
    [
      'a pattern in the black that no operator has set',
      {
        drawing: '/Pattern cs /Bars scn 0 0 144 108 re f',
        resources: '/Pattern << /Bars 3 0 R >>',
        objects: {
          3: pack(
            '0 0 6 12 re f',
            '/Type /Pattern /PatternType 1 /PaintType 1 /TilingType 1 /BBox [0 0 12 12] /XStep 12 /YStep 12 /Resources << >>',
          ),
        },
      },
      [0, 0, 0, 0.5],
    ],
    [
      'a pattern that is told its ink where it is used',
      {
        drawing: '/Tint cs 0 0.5 0 0 /Dots scn 0 0 144 108 re f',
        resources: '/ColorSpace << /Tint [/Pattern /DeviceCMYK] >> /Pattern << /Dots 3 0 R >>',
        objects: {
          3: pack(
            '0 0 6 12 re f',
            '/Type /Pattern /PatternType 1 /PaintType 2 /TilingType 1 /BBox [0 0 12 12] /XStep 12 /YStep 12 /Resources << >>',
          ),
        },
      },
      [0, 0.25, 0, 0],
    ],
    [
      'type whose letters are drawings',
      {
        drawing: '1 0 0 0 k BT /Squares 1 Tf 0 0 Td (a) Tj ET',
        resources: '/Font << /Squares 3 0 R >>',
        objects: {
          3: '<< /Type /Font /Subtype /Type3 /FontBBox [0 0 72 108] /FontMatrix [1 0 0 1 0 0] /CharProcs << /square 4 0 R >> /Encoding << /Type /Encoding /Differences [97 /square] >> /FirstChar 97 /LastChar 97 /Widths [72] /Resources << >> >>',
          4: pack('72 0 d0 0 0 72 54 re f 0 0 1 0 k 0 54 72 54 re f'),
        },
      },
      [0.25, 0, 0.25, 0],
    ],
    [
      'two inks of one space, mixed',
      {
        drawing: '/Two cs 0.5 0.25 scn 0 0 144 108 re f',
        resources: '/ColorSpace << /Two [/DeviceN [/Cyan /Marigold] /DeviceCMYK 3 0 R] >>',
        objects: {
          3: pack('{ 0 exch 0 }', '/FunctionType 4 /Domain [0 1 0 1] /Range [0 1 0 1 0 1 0 1]'),
        },
      },
      [0.5, 0, 0.25, 0],
    ],
    [
      'an ink, whatever is written in notes, names and remarks of the drawing',
      {
        drawing:
          '/k << /Says (1 1 1 1 k \\) 1 g) /Hex <31206b> >> DP % 1 1 1 1 k\n0.4 0 0 0 k /g MP 0 0 144 108 re f',
      },
      [0.4, 0, 0, 0],
    ],
    [
      'a stencil, which has no colours of its own',
      {
        ...pictured(
          pack(
            Uint8Array.from([0b10000000, 0b00000000]),
            '/Type /XObject /Subtype /Image /Width 2 /Height 2 /BitsPerComponent 1 /ImageMask true',
          ),
        ),
        drawing: '0 0 1 0 k q 144 0 0 108 0 0 cm /Picture Do Q',
      },
      [0, 0, 0.75, 0],
    ],
    [
      'a picture of four inks',
      pictured(pictureOf(2, 2, [255, 51, 0, 128, 0, 51, 0, 128, 255, 51, 0, 0, 0, 51, 0, 0], '/DeviceCMYK')),
      [0.5, 0.2, 0, 0.251],
    ],
    [
      'a picture whose numbers are turned about',
      pictured(pictureOf(1, 1, [255, 51, 0, 204], '/DeviceCMYK /Decode [1 0 1 0 1 0 1 0]')),
      [0, 0.8, 1, 0.2],
    ],
    ['a JPEG of four inks', pictured(INKED_JPEG), [1, 64 / 255, 1 / 255, 32 / 255]],
    [
      'a picture with a table of inks',
      pictured(pictureOf(2, 2, [0, 1, 1, 1], '[/Indexed /DeviceCMYK 1 <FF000000 00FF0033>]')),
      [0.25, 0.75, 0, 0.15],
    ],
    [
      'a picture inside the drawing',
      { drawing: '144 0 0 108 0 0 cm BI /W 2 /H 1 /BPC 8 /CS /CMYK ID \xff\x00\x00\x00\x00\xff\x00\x80\nEI' },
      [0.5, 0.5, 0, 0.251],
    ],
    [
      'a special ink whose replacement grows evenly',
      specialInk('<< /FunctionType 2 /Domain [0 1] /C0 [0 0 0 0] /C1 [0 0.5 1 0.1] /N 1 >>'),
      [0, 0.25, 0.5, 0.05],
    ],
    [
      'a special ink whose replacement grows as its square',
      specialInk('<< /FunctionType 2 /Domain [0 1] /C0 [0 0 0 0] /C1 [0 0.8 1 0] /N 2 >>'),
      [0, 0.2, 0.25, 0],
    ],
    [
      'a special ink whose replacement is calculated',
      specialInk('3 0 R', {
        3: pack(
          '{ dup 0.5 mul exch 0 exch dup 0.2 mul exch pop 0 }',
          '/FunctionType 4 /Domain [0 1] /Range [0 1 0 1 0 1 0 1]',
        ),
      }),
      [0.25, 0, 0.1, 0],
    ],
    [
      'a special ink whose replacement is a table',
      specialInk('3 0 R', {
        3: pack(
          Uint8Array.from([0, 0, 0, 0, 255, 128, 0, 51]),
          '/FunctionType 0 /Domain [0 1] /Range [0 1 0 1 0 1 0 1] /Size [2] /BitsPerSample 8',
        ),
      }),
      [0.5, 0.25, 0, 0.1],
    ],
    [
      'a special ink whose replacement is told in two parts',
      specialInk(
        '<< /FunctionType 3 /Domain [0 1] /Bounds [0.4] /Encode [0 1 1 1] /Functions [<< /FunctionType 2 /Domain [0 1] /C0 [0 0 0 0] /C1 [1 0 0 0] /N 1 >> << /FunctionType 2 /Domain [0 1] /C0 [0 0 0 0] /C1 [0 0.6 0 0] /N 1 >>] >>',
      ),
      [0, 0.6, 0, 0],
    ],
    [
      'all inks at once, and one of the four by its name',
      {
        drawing: '/All cs 0.5 scn 0 0 144 54 re f /One cs 1 scn 0 54 144 54 re f',
        resources:
          '/ColorSpace << /All [/Separation /All /DeviceCMYK 3 0 R] /One [/Separation /Magenta /DeviceCMYK 3 0 R] >>',
        objects: { 3: '<< /FunctionType 2 /Domain [0 1] /C0 [0 0 0 0] /C1 [1 1 1 1] /N 1 >>' },
      },
      [0.25, 0.75, 0.25, 0.25],
    ],
    // 1 - 0.6 = 0.4 black; 0.6 - 0.2 = 0.4 cyan, 0.6 - 0.4 = 0.2 magenta: half a page.
    [
      'red, green and blue beside inks, replaced by black as far as they are grey',
      { drawing: '0.2 0.4 0.6 rg 0 0 144 54 re f 0 0 0 1 k 0 54 144 54 re f' },
      [0.2, 0.1, 0, 0.7],
    ],
    [
      'a picture in red, green and blue beside an ink',
      (() => {
        const page = pictured(pictureOf(1, 2, [204, 102, 0, 0, 204, 102], '/DeviceRGB'));
        return { ...page, drawing: `${page.drawing} 0 0 0 1 k 0 0 0.1 0.1 re f` };
      })(),
      [0.4, 0.2, 0.6, 0.2],
    ],
    [
      'red, green and blue alone',
      pictured(pictureOf(1, 2, [204, 102, 0, 0, 204, 102], '/DeviceRGB')),
      [0.4, 0.2, 0.6, 0.2],
    ],
  ])('are measured within one in a hundred: %s', async (_, page, wanted) => {
    expectInks(await measure(page), wanted);
  });

  it('are those of the piece and its bleed alone, whatever lies beside them and however the page is turned', async () => {
    const bytes = writePages([
      {
        media: [-20, 10, 220, 160],
        rotate: 90,
        drawing: '0 1 0 0 k -20 10 240 150 re f 0 0 0 1 k 0 40 100 50 re f 1 0 0 0 k 0 90 100 50 re f',
      },
    ]);
    // The page is seen turned clockwise: what lies at (0, 40) of the file lies at x = 30 and 120 from its foot.
    const seen = await measured(bytes, { x: 30, y: 120, w: 100, h: 100 } as Rect<'art'>);
    expectInks(seen, [0.5, 0, 0, 0.5]);
    const turned = await measured(bytes, { x: 20, y: 30, w: 100, h: 100 } as Rect<'art'>, 90);
    expectInks(turned, [0.5, 0, 0, 0.5]);
  });

  it('are counted on the face alone, however few points it has', async () => {
    const bytes = writeInked({ drawing: '0 0.5 0 0 k 0 0 144 108 re f' });
    const tiny = await measured(bytes, { x: 20, y: 30, w: 3.1, h: 2.3 } as Rect<'art'>);
    expectInks(tiny, [0, 0.5, 0, 0]);
  });

  it('leave a mask of light alone: it says where, not with what', async () => {
    const page: InkedPage = {
      drawing: '/Masked gs 1 0 0 0 k 0 0 144 108 re f',
      resources: '/ExtGState << /Masked << /SMask << /S /Luminosity /G 3 0 R >> >> >>',
      objects: {
        3: pack(
          '1 g 0 0 36 108 re f',
          '/Type /XObject /Subtype /Form /BBox [0 0 144 108] /Group << /S /Transparency /CS /DeviceGray >> /Resources << >>',
        ),
      },
    };
    expectInks(await measure(page), [0.25, 0, 0, 0]);
  });
});

describe('The grey of a page', () => {
  it('is the share that is black, for black and white', async () => {
    expect((await measure({ drawing: '0 g 0 0 36 108 re f' })).grey).toBeCloseTo(0.25, 2);
    expect((await measure({ drawing: checkerboard(16, 12) })).grey).toBeCloseTo(0.5, 2);
    const hairlines = Array.from({ length: 48 }, (_, i) => `${3 * i} 0 1 108 re f`).join(' ');
    expect((await measure({ drawing: hairlines })).grey).toBeCloseTo(1 / 3, 2);
  });

  it('is the light that a tint swallows, its values read as sRGB', async () => {
    // IEC 61966-2-1: the value 0.5 sends back ((0.5 + 0.055) / 1.055) ^ 2.4 = 0.214 of the light.
    expect((await measure({ drawing: '0.5 g 0 0 144 108 re f' })).grey).toBeCloseTo(1 - 0.214, 2);
    // ITU-R BT.709: pure green carries 0.7152 of it.
    expect((await measure({ drawing: '0 1 0 rg 0 0 144 108 re f' })).grey).toBeCloseTo(1 - 0.7152, 3);
  });
});

describe('How it was measured', () => {
  it('is said: inks as the art has them, or estimated, or for greys only black', async () => {
    const inks = await measure({ drawing: '1 0 0 0 k 0 0 9 9 re f' });
    expect(inks.how).toContain('Inks as the art has them, plate by plate');
    expect(inks.how).not.toContain('RGB has');
    const lights = await measure({ drawing: '1 0 0 rg 0 0 9 9 re f' });
    expect(lights.how).toContain('estimated by full grey replacement');
    const mixed = await measure({ drawing: '1 0 0 rg 0 0 9 9 re f 0 0 0 1 k 9 9 9 9 re f' });
    expect(mixed.how).toMatch(/plate by plate.*estimated by full grey replacement/);
    expect((await measure({ drawing: '0 g 0 0 9 9 re f' })).how).toContain('greys only');
    expect(inks.how).toContain('sRGB');
  });

  it('is said where colours do not tell their inks, which are then estimated from what is seen', async () => {
    const lab = await measure({
      drawing: '0 0 0 1 k 0 0 1 1 re f /Seen cs 100 0 0 scn 0 0 144 108 re f',
      resources: '/ColorSpace << /Seen [/Lab << /WhitePoint [0.95 1 1.09] >>] >>',
    });
    expect(lab.how).toContain('do not tell their inks');
    expect(lab.cmyk[3]).toBeLessThan(0.02);
  });
});
