import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { balance } from '../../../../shared/pdf/form/balance.ts';

const bytes = (drawing: string) => new Uint8Array(Buffer.from(drawing, 'latin1'));
const balanced = (drawing: string) => Buffer.from(balance(bytes(drawing))).toString('latin1');

describe('a drawing that closes all it opens', () => {
  it.each([
    ['nothing', ''],
    ['graphics states', 'q 1 0 0 1 0 0 cm q 0 0 9 9 re f Q Q'],
    ['text', 'BT /F1 12 Tf (Supper) Tj ET'],
    ['marked content', '/OC /L1 BDC /Span BMC EMC EMC'],
    ['all of them, crossing', 'q BT /P BMC Q ET EMC'],
    ['words that only look alike', 'qq QQ EMCQ BTX /q /Q /EMC 1q [(q)]'],
    ['strings', '(Q (EMC) \\) Q \\( q) Tj (\\\\) Tj'],
    ['strings in hexadecimal', '<51> Tj <</Q 1/q 2>> /P gs'],
    ['comments', '% q Q EMC\n0 g % q\r1 g'],
    ['an inline picture', 'BI /W 2 /H 2 ID q Q\xff EMC EI Q\xff\x01 EI\n0 g'],
    ['an inline picture at the end', 'q Q BI /W 1 /H 1 ID q EI'],
    ['an inline picture cut short', 'BI /W 2 /H 2 ID q q q q'],
    ['a string cut short', '(q q q'],
    ['a hexadecimal string cut short', '<71 q q'],
  ])('stays what it is: %s', (_, drawing) => {
    const given = bytes(drawing);
    expect(balance(given)).toBe(given);
  });

  it('is read with every white space and delimiter between its words', () => {
    for (const gap of [
      ' ',
      '\t',
      '\n',
      '\r',
      '\f',
      '\0',
      '(x)',
      '<00>',
      '/N ',
      '[',
      ']',
      '{',
      '}',
      '%x\n',
      '<<>>',
    ]) {
      const given = bytes(`q${gap}Q`);
      expect(balance(given)).toBe(given);
    }
  });
});

describe('a drawing that does not', () => {
  it.each([
    ['q 1 g', 'q 1 g\nQ'],
    ['q q Q', 'q q Q\nQ'],
    ['BT (x) Tj', 'BT (x) Tj\nET'],
    ['/P BMC', '/P BMC\nEMC'],
    ['/OC /L BDC', '/OC /L BDC\nEMC'],
    ['q BT /P BMC', 'q BT /P BMC\nEMC\nET\nQ'],
    ['q /P BMC q BT', 'q /P BMC q BT\nET\nQ\nEMC\nQ'],
    ['BT BT ET', 'BT BT ET'],
  ])('is closed at its end, the last opened first: %s', (drawing, mended) => {
    expect(balanced(drawing)).toBe(mended);
  });

  it.each([
    ['Q 1 g', '  1 g'],
    ['1 g Q', '1 g  '],
    ['q Q Q Q', 'q Q    '],
    ['EMC q Q', '    q Q'],
    ['Q q', '  q\nQ'],
    ['/P BMC EMC EMC', '/P BMC EMC    '],
    ['<51>Q', '<51> '],
    ['BI ID\nEI\nQ', 'BI ID\nEI\n '],
    ['ET', 'ET'],
  ])('has what closes nothing blanked: %s', (drawing, mended) => {
    expect(balanced(drawing)).toBe(mended);
  });

  it('is read on behind an inline picture that holds what looks like its end', () => {
    const picture = 'BI /W 9 /H 9 ID \x01 EI \xfe\x02 EI\n';
    expect(balanced(`${picture}Q`)).toBe(`${picture} `);
  });
});

it('never mends twice, and mends any mixture of words', () => {
  const word = fc.constantFrom(
    'q',
    'Q',
    'BT',
    'ET',
    '/P BMC',
    '/P /L BDC',
    'EMC',
    '(q Q)',
    '<51>',
    '% Q\n',
    '1 0 0 rg',
  );
  fc.assert(
    fc.property(fc.array(word, { maxLength: 40 }), (words) => {
      const once = balance(bytes(words.join(' ')));
      expect(balance(once)).toBe(once);
      const left = (pattern: RegExp) =>
        Buffer.from(once)
          .toString('latin1')
          .replace(/\(q Q\)|<51>|% Q\n/g, ' ')
          .match(pattern)?.length ?? 0;
      expect(left(/\bq\b/g)).toBe(left(/\bQ\b/g));
      expect(left(/\bB(MC|DC)\b/g)).toBe(left(/\bEMC\b/g));
    }),
  );
});

it('takes any bytes', () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 200 }), (given) => {
      const once = balance(given);
      expect(once.length).toBeGreaterThanOrEqual(given.length);
    }),
  );
});
