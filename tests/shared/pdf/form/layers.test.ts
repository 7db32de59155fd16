import { describe, expect, it } from 'vitest';
import { CARD, type Objects, type PageParts, writePages } from '../../../kit/pdfs.ts';
import { opened, placed } from '../../../kit/placed.ts';
import { picturesByPoppler, unlikeness } from '../../../kit/poppler.ts';
import { type ReadObjects, readObjects, type Value } from '../../../kit/qpdf.ts';

const LAYERS: Objects = {
  3: '<< /Type /OCG /Name (English) >>',
  4: '<< /Type /OCG /Name (Welsh) /Usage << /Print << /PrintState /OFF >> >> >>',
  5: '<< /Type /OCG /Name (Unused) >>',
  6: '<< /Type /OCMD /OCGs [3 0 R 4 0 R] /P /AllOn >>',
};

const PAGE: PageParts = {
  media: CARD,
  resources: '/Properties << /One 3 0 R /Two 4 0 R /Both 6 0 R >>',
  drawing: [
    '1 0 0 rg /OC /One BDC 20 20 100 100 re f EMC',
    '0 1 0 rg /OC /Two BDC 150 20 100 100 re f EMC',
    '0 0 1 rg /OC /Both BDC 20 200 100 100 re f EMC',
  ].join('\n'),
};

const withStates = (states: string, page = PAGE) =>
  writePages([page], {
    objects: LAYERS,
    catalog: `/OCProperties << /OCGs [3 0 R 4 0 R 5 0 R] /D << ${states} >> >>`,
  });

/** The names of the layers that a list holds. */
function namesOf(file: ReadObjects, layers: Value): readonly string[] {
  return layers.map((layer: Value) => file.follow(layer)['/Name'].slice(2)).toSorted();
}

describe('layers', () => {
  it.each([
    ['all on', '', []],
    ['one off', '/OFF [4 0 R 5 0 R]', ['Welsh']],
    ['all off but one', '/BaseState /OFF /ON [3 0 R 5 0 R]', ['Welsh']],
    ['all off', '/BaseState /OFF', ['English', 'Welsh']],
    ['on although said to be off before', '/BaseState /ON /OFF []', []],
    ['unchanged, which is on at first', '/BaseState /Unchanged /OFF [3 0 R]', ['English']],
  ])('open in the state of their own file: %s', async (_, states, off) => {
    const bytes = withStates(states);
    const { bytes: sheet } = await placed({ art: await opened(bytes) });
    const made = readObjects(sheet);
    const properties = made.catalog['/OCProperties'];
    expect(namesOf(made, properties['/OCGs'])).toEqual(['English', 'Welsh']);
    expect(namesOf(made, properties['/D']['/Order'])).toEqual(['English', 'Welsh']);
    expect(namesOf(made, properties['/D']['/OFF'])).toEqual(off);
    expect(properties['/D']['/BaseState']).toBe('/ON');
    expect(unlikeness(picturesByPoppler(sheet)[0]!, picturesByPoppler(bytes)[0]!)).toBe(0);
  });

  it('that switch by themselves when the sheet is printed go on doing so', async () => {
    const states =
      '/AS [<< /Event /Print /Category [/Print] /OCGs [4 0 R 5 0 R] >> << /Event /View /Category [/View] /OCGs [5 0 R] >> /None]';
    const { bytes: sheet } = await placed({ art: await opened(withStates(states)) });
    const made = readObjects(sheet);
    const automatic = made.catalog['/OCProperties']['/D']['/AS'];
    expect(automatic).toHaveLength(1);
    expect(automatic[0]).toMatchObject({ '/Event': '/Print', '/Category': ['/Print'] });
    expect(namesOf(made, automatic[0]['/OCGs'])).toEqual(['Welsh']);
    const [welsh] = automatic[0]['/OCGs'];
    expect(made.follow(welsh)['/Usage']).toEqual({ '/Print': { '/PrintState': '/OFF' } });
  });

  it('of several files stand side by side, each in its state', async () => {
    const first = await opened(withStates('/OFF [3 0 R]'));
    const second = await opened(withStates('/OFF [4 0 R]'));
    const { bytes: sheet } = await placed({ art: first }, { art: second });
    const made = readObjects(sheet);
    const properties = made.catalog['/OCProperties'];
    expect(namesOf(made, properties['/OCGs'])).toEqual(['English', 'English', 'Welsh', 'Welsh']);
    expect(namesOf(made, properties['/D']['/OFF'])).toEqual(['English', 'Welsh']);
    const [one, other] = picturesByPoppler(sheet);
    expect(unlikeness(one!, picturesByPoppler(withStates('/OFF [3 0 R]'))[0]!)).toBe(0);
    expect(unlikeness(other!, picturesByPoppler(withStates('/OFF [4 0 R]'))[0]!)).toBe(0);
  });

  it('are on where their file says nothing of them', async () => {
    const bytes = writePages([PAGE], { objects: LAYERS });
    const { bytes: sheet } = await placed({ art: await opened(bytes) });
    expect(readObjects(sheet).catalog['/OCProperties']['/D']['/OFF']).toEqual([]);
  });

  it('are not spoken of where none is used', async () => {
    const bytes = withStates('', { media: CARD });
    const { bytes: sheet } = await placed({ art: await opened(bytes) });
    expect(readObjects(sheet).catalog).not.toHaveProperty('/OCProperties');
  });
});
