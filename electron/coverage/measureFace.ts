// How much ink the art of one face takes: its page rendered by PDFium, as it looks and plate by plate.
import { PDFDocument, PDFName } from 'pdf-lib';
import { type Fault, ok, type Result, refuse } from '../../shared/fault/result.ts';
import type { Head } from '../../shared/geometry/head.ts';
import type { Rect } from '../../shared/geometry/space.ts';
import {
  type FaceCoverage,
  greyCoverage,
  inksOfLights,
  type Pixels,
  plateCoverage,
} from '../../shared/ink/coverage.ts';
import type { OpenArt } from '../../shared/pdf/art/openArt.ts';
import { createFormMaker } from '../../shared/pdf/form/formMaker.ts';
import { type MadePlate, makePlate } from '../../shared/pdf/plates/makePlate.ts';
import { type Renderer, RendererBroke } from '../proof/renderer.ts';

/** What is measured: a page of the art, turned so that its head is up, cut to a box on it (pt). */
export interface MeasuredPage {
  readonly art: OpenArt;
  /** From 1. */
  readonly page: number;
  readonly rotate: Head;
  /** The trim and its bleed. */
  readonly box: Rect<'art'>;
}

/** Pixels to the inch, fewer where the face is large. */
const PIXELS_PER_INCH = 300;
const MAX_PIXELS = 4e6;
/** Amounts of ink are averaged without loss, so plates need half as many each way. */
const PLATES_COARSER = 0.5;

/**
 * Measures the coverage of a face. Refusals: those of the art, and `art-damaged` where the renderer breaks on it; the
 * renderer must then not be used again.
 *
 * The grey is that of the page as rendered, its pixels taken for sRGB. Inks are measured plate by plate where the art has
 * inks, else estimated from the rendered colours.
 */
export async function measureFace(renderer: Renderer, page: MeasuredPage): Promise<Result<FaceCoverage>> {
  const alone = await faceAlone(page);
  if (!alone.ok) return alone;
  try {
    return await measure(renderer, alone.value, page);
  } catch (error) {
    if (!(error instanceof RendererBroke)) throw error;
    return refuse(unmeasured(page));
  }
}

async function measure(
  renderer: Renderer,
  bytes: Uint8Array,
  page: MeasuredPage,
): Promise<Result<FaceCoverage>> {
  const seen = look(renderer, bytes, page.box);
  if (seen === undefined) return refuse(unmeasured(page));
  const [grey = 0] = withoutEdges(seen, 1, (pixels) => [greyCoverage(pixels)]);
  const black = await makePlate(bytes, 'black');
  const inked = black.kinds.has('cmyk') || black.kinds.has('spot');
  if (!inked || !black.whole) {
    const [c = 0, m = 0, y = 0, k = 0] = withoutEdges(seen, 1, inksOfLights);
    return ok({ grey, cmyk: [c, m, y, k], how: black.whole ? howLights(black) : HOW_UNTOLD });
  }
  const plates = [
    await makePlate(bytes, 'cyan'),
    await makePlate(bytes, 'magenta'),
    await makePlate(bytes, 'yellow'),
    black,
  ];
  const [c, m, y, k] = plates.map((plate) => {
    const shown = look(renderer, plate.bytes, page.box);
    return shown && withoutEdges(shown, PLATES_COARSER, (pixels) => [plateCoverage(pixels)])[0];
  });
  if (c === undefined || m === undefined || y === undefined || k === undefined) {
    return refuse(unmeasured(page));
  }
  return ok({ grey, cmyk: [c, m, y, k], how: howInks(black) });
}

/** The face as a PDF of its own: what the sheet will hold of it. */
async function faceAlone({ art, page, rotate, box }: MeasuredPage): Promise<Result<Uint8Array>> {
  const document = await PDFDocument.create({ updateMetadata: false });
  const maker = createFormMaker(document);
  const form = maker.formOf(art, page, rotate, box);
  if (!form.ok) return form;
  maker.finish();
  const { context } = document;
  const { node } = document.addPage([box.w, box.h]);
  node.set(PDFName.of('Resources'), context.obj({ XObject: { Face: form.value } }));
  node.set(PDFName.of('Contents'), context.register(context.flateStream('/Face Do\n')));
  return ok(await document.save({ useObjectStreams: false }));
}

/** Counts something on pictures of the first page, all of it, so many times as fine as is usual. */
type Look = (finer: number, count: (pixels: Pixels) => readonly number[]) => readonly number[];

/**
 * The page is rendered lying askew by so little (radians) that no edge moves by half a pixel: the renderer rounds upright
 * rectangles to whole pixels, and draws slanting ones as they are.
 */
const ASKEW_RADIANS = 5e-5;

function look(renderer: Renderer, bytes: Uint8Array, { w, h }: Rect<'art'>): Look | undefined {
  const document = renderer.open(bytes);
  const page = typeof document === 'string' ? undefined : document.page(1);
  if (page === undefined) return undefined;
  const usual = Math.min(PIXELS_PER_INCH, Math.sqrt((MAX_PIXELS * 72 ** 2) / (w * h))) / 72;
  return (finer, count) => {
    const scale = usual * finer;
    const cos = scale * Math.cos(ASKEW_RADIANS);
    const sin = scale * Math.sin(ASKEW_RADIANS);
    const width = Math.ceil(w * cos + h * sin);
    const height = Math.ceil(w * sin + h * cos);
    const matrix = { a: cos, b: sin, c: sin, d: -cos, e: 0, f: h * cos };
    const { pixels } = page.source.render(matrix, width, height);
    // What lies around the page is blank.
    const share = (width * height) / (w * h * scale ** 2);
    return count(pixels).map((part) => Math.min(1, part * share));
  };
}

/**
 * A count free of what pixels do to edges: where one is half black its light is averaged before it is read, and pictures
 * reach to whole pixels. That shrinks with the size of the pixels, so the count on pixels twice as large tells how far to
 * go on to pixels of no size.
 */
function withoutEdges(
  shown: Look,
  finer: number,
  count: (pixels: Pixels) => readonly number[],
): readonly number[] {
  const coarse = shown(finer / 2, count);
  return shown(finer, count).map((fine, i) => Math.min(1, Math.max(0, 2 * fine - (coarse[i] ?? fine))));
}

const GREY_WORDS = 'Grey from the rendered page, read as sRGB.';
const LIGHTS_WORDS =
  'RGB has no inks yet: they are estimated by full grey replacement, where what cyan, magenta and yellow have in common goes to black.';
const HOW_UNTOLD = `${GREY_WORDS} Some colours of the art do not tell their inks, so all inks are estimated from the rendered colours by full grey replacement.`;

function howLights({ kinds }: MadePlate): string {
  return `${GREY_WORDS} ${kinds.has('rgb') ? LIGHTS_WORDS : 'The art has greys only, which print in black.'}`;
}

function howInks({ kinds }: MadePlate): string {
  return [
    GREY_WORDS,
    'Inks as the art has them, plate by plate, without a profile.',
    ...(kinds.has('spot') ? ['Special inks are taken for the inks that the art says may replace them.'] : []),
    ...(kinds.has('rgb') ? [LIGHTS_WORDS] : []),
  ].join(' ');
}

function unmeasured({ art, page }: MeasuredPage): Fault {
  return {
    code: 'art-damaged',
    message: `The ink of page ${page} of ${art.name} could not be measured: the renderer cannot draw it.`,
    remedy: 'Have the art exported again, as a plain PDF.',
    where: art.name,
  };
}
