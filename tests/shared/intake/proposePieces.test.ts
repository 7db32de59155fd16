import { describe, expect, it } from 'vitest';
import { type IntakeAnswers, proposePieces, type TakenFile } from '../../../shared/intake/proposePieces.ts';
import { plainPage, takenFile } from '../../kit/takenFile.ts';

const card = plainPage(378, 522);
const tag = plainPage(162, 270);

function propose(files: readonly TakenFile[], answers: IntakeAnswers = {}) {
  const { pieces, questions } = proposePieces(files, 'in', answers);
  const face = (f: { art: string; page: number } | undefined) =>
    f === undefined ? 'nothing' : `${f.art} ${f.page}`;
  return {
    pieces: pieces.map((p) => `${p.name}: ${face(p.front)} | ${face(p.back)}`),
    asked: questions.map((q) => q.asks),
    questions,
  };
}

describe('one file', () => {
  it('of two like pages is a piece with front and back, and nothing is asked', async () => {
    const { pieces, asked } = propose([await takenFile('harvest-supper.pdf', card, card)]);
    expect(pieces).toEqual(['Harvest supper: harvest-supper.pdf 1 | harvest-supper.pdf 2']);
    expect(asked).toEqual([]);
  });

  it('of one page is a piece with nothing behind', async () => {
    expect(propose([await takenFile('poster.pdf', card)])).toMatchObject({
      pieces: ['Poster: poster.pdf 1 | nothing'],
      asked: [],
    });
  });

  it('of pages that differ is a piece for each', async () => {
    expect(propose([await takenFile('set.pdf', card, tag)]).pieces).toEqual([
      'Set 1: set.pdf 1 | nothing',
      'Set 2: set.pdf 2 | nothing',
    ]);
  });

  it('of more pages is asked about: by turns, a shared back, or each by itself', async () => {
    const file = await takenFile('names.pdf', card, card, card, card);
    const first = propose([file]);
    expect(first.asked).toEqual(['names.pdf has 4 pages. How do they belong together?']);
    expect(first.pieces).toEqual([
      'Names 1: names.pdf 1 | names.pdf 2',
      'Names 2: names.pdf 3 | names.pdf 4',
    ]);
    expect(propose([file], { 'pages names.pdf': 'shared' }).pieces).toEqual([
      'Names 1: names.pdf 1 | names.pdf 4',
      'Names 2: names.pdf 2 | names.pdf 4',
      'Names 3: names.pdf 3 | names.pdf 4',
    ]);
    expect(propose([file], { 'pages names.pdf': 'apart' }).pieces).toHaveLength(4);
  });

  it('of an odd number of pages is not offered by turns', async () => {
    const { questions } = propose([await takenFile('names.pdf', card, card, card)]);
    expect(questions[0]?.answers.map((a) => a.value)).toEqual(['shared', 'apart']);
  });
});

describe('two files of one page', () => {
  it('that say front and back are one piece, in whatever order they come', async () => {
    const files = [await takenFile('supper_back.pdf', card), await takenFile('Supper-front.pdf', card)];
    const { pieces, asked } = propose(files);
    expect(pieces).toEqual(['Supper: Supper-front.pdf 1 | supper_back.pdf 1']);
    expect(asked).toEqual([]);
  });

  it('that do not say are asked about', async () => {
    const files = [await takenFile('a.pdf', card), await takenFile('b.pdf', card)];
    expect(propose(files).asked).toEqual(['Are a.pdf and b.pdf the two faces of one piece?']);
    expect(propose(files).pieces).toEqual(['A: a.pdf 1 | b.pdf 1']);
    expect(propose(files, { 'pair a.pdf b.pdf': 'second' }).pieces).toEqual(['B: b.pdf 1 | a.pdf 1']);
    expect(propose(files, { 'pair a.pdf b.pdf': 'apart' }).pieces).toEqual([
      'A: a.pdf 1 | nothing',
      'B: b.pdf 1 | nothing',
    ]);
  });

  it('of different sizes are two pieces', async () => {
    const { pieces, asked } = propose([await takenFile('a.pdf', card), await takenFile('b.pdf', tag)]);
    expect(pieces).toHaveLength(2);
    expect(asked).toEqual([]);
  });
});

it('pieces of the same name are told apart', async () => {
  const files = [await takenFile('x/card.pdf', card, card), await takenFile('x/card.pdf.pdf', tag, tag)];
  const names = proposePieces(
    files.map((f, i) => ({ ...f, name: 'card.pdf', art: String(i) })),
    'in',
  ).pieces.map((p) => p.name);
  expect(names).toEqual(['Card', 'Card (2)']);
});

it('a size that can be read in more than one way is asked, and the answer is taken', async () => {
  const file = await takenFile('tag.pdf', plainPage(216, 216));
  const { questions } = proposePieces([file], 'in');
  expect(questions.map((q) => q.asks)).toEqual([
    'The page of Tag does not say where it is trimmed. How large is the piece?',
  ]);
  const answer = questions[0]?.answers[1];
  expect(answer?.label).toBe('3 × 3 in: the page, without bleed');
  const [piece] = proposePieces([file], 'in', { 'size tag.pdf 1': answer?.value ?? '' }).pieces;
  expect(piece?.trim.map((l) => l.typed)).toEqual(['3 in', '3 in']);
});
