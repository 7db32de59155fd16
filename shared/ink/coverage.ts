// How much of a face is covered with ink: what was measured on its rendered page.

/** The coverage of one face, trim and bleed together; every number from 0 (blank) to 1 (covered whole). */
export interface FaceCoverage {
  /** As one black ink would make the same grey. */
  readonly grey: number;
  /** Cyan, magenta, yellow and black, each for itself. */
  readonly cmyk: readonly [number, number, number, number];
  /** How it was measured, and what was estimated, in words. */
  readonly how: string;
}

/** What the ink model is told: all four inks together, from 0 to 4. */
export function inkCoverage({ cmyk }: Pick<FaceCoverage, 'cmyk'>): number {
  return cmyk.reduce((all, one) => all + one, 0);
}

/** Pixels as red, green and blue bytes. */
export type Pixels = Uint8Array;

/** The light that each value of sRGB stands for. @source IEC 61966-2-1: the transfer of sRGB. */
const LIGHT = Float64Array.from({ length: 256 }, (_, byte) => {
  const value = byte / 255;
  return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
});

/**
 * The share of a picture that a black ink would have to cover to send back as little light: the pixels are taken for
 * sRGB, their luminance for reflectance, paper for white and full ink for black.
 *
 * @source IEC 61966-2-1 (transfer), ITU-R BT.709 (weights of the luminance); Murray and Davies 1936 with an ink that
 * sends back nothing.
 */
export function greyCoverage(pixels: Pixels): number {
  let light = 0;
  for (let i = 0; i < pixels.length; i += 3) {
    light +=
      0.2126 * (LIGHT[pixels[i] ?? 0] ?? 0) +
      0.7152 * (LIGHT[pixels[i + 1] ?? 0] ?? 0) +
      0.0722 * (LIGHT[pixels[i + 2] ?? 0] ?? 0);
  }
  return 1 - light / (pixels.length / 3);
}

/** The coverage of a picture that shows one plate as a grey: values are amounts of ink, not of light. */
export function plateCoverage(pixels: Pixels): number {
  let white = 0;
  for (let i = 0; i < pixels.length; i += 3) white += pixels[i + 1] ?? 0;
  return 1 - white / 255 / (pixels.length / 3);
}

/**
 * The inks of a picture in colours of light, by full grey replacement: what cyan, magenta and yellow have in common goes
 * to black and is taken from each of them.
 *
 * @source ISO 32000-1, 10.3.5, with black generation and undercolour removal whole.
 */
export function inksOfLights(pixels: Pixels): readonly [number, number, number, number] {
  let [cyan, magenta, yellow, black] = [0, 0, 0, 0];
  for (let i = 0; i < pixels.length; i += 3) {
    const red = pixels[i] ?? 0;
    const green = pixels[i + 1] ?? 0;
    const blue = pixels[i + 2] ?? 0;
    const lightest = Math.max(red, green, blue);
    cyan += lightest - red;
    magenta += lightest - green;
    yellow += lightest - blue;
    black += 255 - lightest;
  }
  const whole = (255 * pixels.length) / 3;
  return [cyan / whole, magenta / whole, yellow / whole, black / whole];
}

/** A face of a job by the name of its piece, with what was measured on it. */
export interface CoveredFace {
  readonly piece: string;
  readonly face: 'front' | 'back';
  readonly coverage: FaceCoverage;
}
