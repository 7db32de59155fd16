// How large the pictures of the art are made: about as large as they are seen, and never more than the window can hold.
import { grow, intersection } from '../../shared/geometry/rect.ts';
import type { Rect } from '../../shared/geometry/space.ts';

/** What is seen of a face just now. */
export interface Sight {
  readonly key: string;
  /** All that is printed of it. */
  readonly whole: Rect<'piece'>;
  /** As far as any of its placements is on the screen; none when they all lie outside. */
  readonly seen: Rect<'piece'> | undefined;
  /** Pixels of the screen for each pt. */
  readonly scale: number;
}

/** A picture to be had: which part of the face, at how many pixels for each pt. */
export interface PictureWish {
  readonly key: string;
  readonly part: Rect<'piece'>;
  readonly scale: number;
  /** Whether it is laid over the picture of the whole, because that cannot be as sharp as the screen. */
  readonly detail: boolean;
}

/** Limits in pixels, of which each takes four bytes. */
export interface PictureLimits {
  readonly each: number;
  readonly all: number;
}

/** 32 MB for a picture and 256 MB for all of them. */
export const PICTURE_LIMITS: PictureLimits = { each: 2 ** 23, all: 2 ** 26 };

/** How much more than what is seen is drawn around it, so that a little panning uncovers nothing blurred. */
const MARGIN_SHARE = 0.15;

/**
 * The pictures for these sights. A face that fits the limit is one picture, sharp on the screen. A larger one is a
 * picture of the whole as sharp as the limit allows, and over it one of the part that is seen. Where all together
 * are too much, all are made coarser alike.
 */
export function planPictures(
  sights: readonly Sight[],
  limits: PictureLimits = PICTURE_LIMITS,
): readonly PictureWish[] {
  const wishes = sights.flatMap((sight) => wishesFor(sight, limits.each));
  const asked = wishes.reduce((sum, wish) => sum + area(wish.part) * wish.scale ** 2, 0);
  const coarser = Math.min(1, Math.sqrt(limits.all / asked));
  return wishes.map((wish) => ({ ...wish, scale: wish.scale * coarser }));
}

function wishesFor({ key, whole, seen, scale }: Sight, each: number): readonly PictureWish[] {
  const most = (part: Rect<'piece'>) => Math.min(scale, Math.sqrt(each / area(part)));
  const base = { key, part: whole, scale: most(whole), detail: false };
  if (base.scale === scale || seen === undefined) return [base];
  const around = grow(seen, MARGIN_SHARE * Math.max(seen.w, seen.h));
  const part = intersection(whole, around);
  return part === undefined ? [base] : [base, { key, part, scale: most(part), detail: true }];
}

/**
 * Whether a picture that is there serves a wish: it covers the part, and is neither blurred nor much finer than can
 * be seen.
 */
export function serves(picture: PictureWish, wish: PictureWish): boolean {
  const sharpness = picture.scale / wish.scale;
  return (
    picture.key === wish.key &&
    picture.detail === wish.detail &&
    sharpness > 0.99 &&
    sharpness < 1.6 &&
    picture.part.x <= wish.part.x &&
    picture.part.y <= wish.part.y &&
    picture.part.x + picture.part.w >= wish.part.x + wish.part.w &&
    picture.part.y + picture.part.h >= wish.part.y + wish.part.h
  );
}

function area(rect: Rect<'piece'>): number {
  return rect.w * rect.h;
}
