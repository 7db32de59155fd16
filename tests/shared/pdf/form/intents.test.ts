import { describe, expect, it } from 'vitest';
import { CARD, type Objects, pack, writePages } from '../../../kit/pdfs.ts';
import { opened, placed } from '../../../kit/placed.ts';
import { readObjects, unfold } from '../../../kit/qpdf.ts';

const PROFILES: Objects = {
  3: pack('an invented profile', '/N 4'),
  4: pack('another invented profile', '/N 4'),
};

const intent = (condition: string, profile: string, standard = 'GTS_PDFX') =>
  `<< /Type /OutputIntent /S /${standard} /OutputConditionIdentifier (${condition}) ${profile} >>`;

const COATED = intent('Invented Coated', '/DestOutputProfile 3 0 R');

async function art(name: string, intents: string) {
  const catalog = intents === '' ? '' : `/OutputIntents [${intents}]`;
  return opened(writePages([{ media: CARD }], { objects: PROFILES, catalog }), { name });
}

async function place(...intents: readonly string[]) {
  const names = ['front.pdf', 'back.pdf', 'inside.pdf'];
  const arts = await Promise.all(intents.map((given, i) => art(names[i]!, given)));
  const { bytes, notices } = await placed(...arts.map((one) => ({ art: one })));
  const made = readObjects(bytes);
  return { intents: unfold(made, made.catalog['/OutputIntents']), notices };
}

const differ = (made: string) =>
  `The art was made for different printing conditions (${made}), so the sheet names none. Look at the colours on a proof, or export all art for one condition.`;

describe('the printing condition of the art', () => {
  it('is that of the sheet, with its profile', async () => {
    const { intents, notices } = await place(COATED);
    expect(intents).toEqual([
      {
        '/Type': '/OutputIntent',
        '/S': '/GTS_PDFX',
        '/OutputConditionIdentifier': 'u:Invented Coated',
        '/DestOutputProfile': expect.objectContaining({ '/N': 4, packed: expect.any(String) }),
      },
    ]);
    expect(notices).toEqual([]);
  });

  it('is that of the sheet when all files agree', async () => {
    const { intents, notices } = await place(COATED, COATED);
    expect(intents).toHaveLength(1);
    expect(notices).toEqual([]);
    const two = COATED + intent('Invented Coated', '', 'GTS_PDFA1');
    expect((await place(two, two)).intents).toHaveLength(2);
  });

  it('is none where no file names one, and nothing is said', async () => {
    expect(await place('', '')).toEqual({ intents: undefined, notices: [] });
  });

  it.each([
    ['one file has none', '', 'none'],
    ['its name is another', intent('Invented News', '/DestOutputProfile 3 0 R'), 'Invented News'],
    [
      'its standard is another',
      intent('Invented Coated', '/DestOutputProfile 3 0 R', 'GTS_PDFA1'),
      'Invented Coated',
    ],
    ['its profile is another', intent('Invented Coated', '/DestOutputProfile 4 0 R'), 'Invented Coated'],
    ['its profile is missing', intent('Invented Coated', ''), 'Invented Coated'],
    ['there are more of them', COATED + intent('Invented News', ''), 'Invented Coated and Invented News'],
    ['it has no name', '<< /S /GTS_PDFX >>', 'a condition without a name'],
    ['it is only described', '<< /S /GTS_PDFX /OutputCondition (Newsprint) >>', 'Newsprint'],
  ])('is said and left open where files differ: %s', async (_, other, words) => {
    const said = [differ(`front.pdf for Invented Coated, back.pdf for ${words}`)];
    expect(await place(COATED, other)).toEqual({ intents: undefined, notices: said });
    const turned = [differ(`front.pdf for ${words}, back.pdf for Invented Coated`)];
    expect(await place(other, COATED)).toEqual({ intents: undefined, notices: turned });
  });

  it('is compared over all files', async () => {
    const { intents, notices } = await place(COATED, COATED, '');
    expect(intents).toBeUndefined();
    expect(notices).toEqual([
      differ('front.pdf for Invented Coated, back.pdf for Invented Coated, inside.pdf for none'),
    ]);
  });
});
