// What the program runs on, as it is told in the About box.
import { expect, it } from 'vitest';
import { runsOn } from '../../../electron/about/runsOn.ts';

it('the desktop program names Electron, Chromium and Node.js with their versions, the other Node.js alone', () => {
  const versions = { node: '24.1.0', v8: '13.6', electron: '45.5.0', chrome: '150.0.1' };
  expect(runsOn(versions)).toEqual(['Electron 45.5.0', 'Chromium 150.0.1', 'Node.js 24.1.0']);
  expect(runsOn({ node: '20.20.2', v8: '11.3' })).toEqual(['Node.js 20.20.2']);
});
