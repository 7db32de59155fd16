// Draws the icon of the packed app from the mark of the window.
import { mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from 'playwright';
import { findBrowser } from './findBrowser.ts';

const house = join(import.meta.dirname, '..');
const SIDE = 1024;

const executablePath = findBrowser();
if (executablePath === undefined) throw new Error('No Chromium browser is here to draw the icon with.');
const browser = await chromium.launch({ executablePath });
const page = await browser.newPage({ viewport: { width: SIDE, height: SIDE } });
const mark = readFileSync(join(house, 'renderer/look/mark.svg')).toString('base64');
await page.setContent(
  `<body style="margin:0"><img width="${SIDE}" height="${SIDE}" src="data:image/svg+xml;base64,${mark}">`,
);
mkdirSync(join(import.meta.dirname, 'resources'), { recursive: true });
await page.screenshot({ path: join(import.meta.dirname, 'resources/icon.png'), omitBackground: true });
await browser.close();
