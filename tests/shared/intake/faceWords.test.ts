import { expect, it } from 'vitest';
import { oppositeFaceName, wordsOfName } from '../../../shared/intake/faceWords.ts';

it.each([
  ['harvest-supper_front.pdf', 'Harvest supper', 'front'],
  ['Menu BACK.pdf', 'Menu', 'back'],
  ['tag side 2.pdf', 'Tag', 'back'],
  ['tag.side1.pdf', 'Tag', 'front'],
  ['recto.pdf', 'Piece', 'front'],
  ['backdrop.pdf', 'Backdrop', undefined],
  ['front and back.pdf', 'Front and back', undefined],
])('%s tells of %s, %s', (file, name, face) => {
  expect(wordsOfName(file)).toEqual({ name, face });
});

it('only the front and the back of the same piece belong together', () => {
  expect(oppositeFaceName('card-front.pdf', 'Card_back.pdf')).toBe(true);
  expect(oppositeFaceName('card-back.pdf', 'card-front.pdf')).toBe(false);
  expect(oppositeFaceName('card-front.pdf', 'tag-back.pdf')).toBe(false);
});
