// What the system hands to a start, as each system does.
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { askedAmong } from '../../../electron/desktop/askedFiles.ts';

const FOLDER = join('/', 'home', 'ann');
const LINK = 'turnlay:job?file=supper.turnlay&print=0123456789abcdef';

it.each([
  // What Windows starts for a double click and for a link; a second start has switches of Chromium's before them.
  ['a double click', ['turnlay', '/jobs/supper.turnlay'], ['/jobs/supper.turnlay']],
  ['a link', ['turnlay', LINK], [LINK]],
  ['a second start', ['turnlay', '--allow-file-access-from-files', LINK], [LINK]],
  ['an upper-case ending', ['turnlay', '/jobs/SUPPER.TURNLAY'], ['/jobs/SUPPER.TURNLAY']],
  // What desktops of Linux put for %U: addresses.
  ['an address', ['turnlay', 'file:///jobs/B%C3%A4r%20100%25.turnlay'], ['/jobs/Bär 100%.turnlay']],
  ['an address that is none', ['turnlay', 'file:///jobs/%ZZ.turnlay'], []],
  ['a relative path', ['turnlay', 'supper.turnlay'], [join(FOLDER, 'supper.turnlay')]],
  ['two at once', ['turnlay', '/a.turnlay', '/b.turnlay'], ['/a.turnlay', '/b.turnlay']],
  ['the program itself', ['/opt/x.turnlay'], []],
  ['other files and switches', ['turnlay', '/art.pdf', '--x.turnlay', '-y.turnlay'], []],
])('%s asks for what it names', (_what, argv, asked) => {
  expect(askedAmong(argv, FOLDER)).toEqual(asked);
});
