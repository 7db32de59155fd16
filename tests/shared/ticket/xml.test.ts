// XML that the program writes is read back as it was, whatever a person has typed.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { element, writeXml } from '../../../shared/ticket/xml.ts';
import { readXml } from '../../kit/readXml.ts';

/** What XML 1.0 can write (section 2.2); all else is written as the sign of what was lost. */
const writable = (text: string) =>
  text.replace(/[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu, '\uFFFD');
const typed = fc.string({ unit: 'binary', maxLength: 40 });

describe('XML', () => {
  it('comes back as it was written, in attributes and in text', () => {
    fc.assert(
      fc.property(typed, typed, (attribute, text) => {
        const { attributes, text: said } = readXml(
          writeXml(element('a', { b: attribute, n: 1.5, yes: true, none: undefined }, text)),
        );
        expect(attributes).toEqual({ b: writable(attribute), n: '1.5', yes: 'true' });
        expect(said).toBe(writable(text));
      }),
    );
  });

  it('keeps tabs and line ends of every kind', () => {
    const odd = 'a\tb\nc\rd\r\ne "f" <g> & \'h\' ]]>';
    const { attributes, text } = readXml(writeXml(element('a', { b: odd }, odd)));
    expect([attributes.b, text]).toEqual([odd, odd]);
  });

  it('writes children two spaces deep, and what is empty in one go', () => {
    const xml = writeXml(element('a', {}, [element('b', { c: 'd' }, [element('e')]), element('f', {}, 'g')]));
    expect(xml).toBe(
      '<?xml version="1.0" encoding="UTF-8"?>\n<a>\n  <b c="d">\n    <e/>\n  </b>\n  <f>g</f>\n</a>\n',
    );
  });
});
