// Another site in the same browser: it can neither ask the program anything, nor load from it, nor frame it.
import { once } from 'node:events';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { expect, test } from './kit/studio.ts';

test('another site gets nothing from the program, though it runs on the same machine', async ({
  studio,
  page,
  context,
}) => {
  await studio.open();
  const origin = new URL(page.url()).origin;
  // The window's own page has its session by now, and the token is gone from its address.
  expect(page.url()).toBe(`${origin}/`);

  const site = createServer((_request, response) => {
    response.setHeader('content-type', 'text/html');
    response.end('<!doctype html><title>Elsewhere</title>');
  }).listen(0, '127.0.0.1');
  await once(site, 'listening');
  const elsewhere = await context.newPage();
  // By the same name as the program, so that the browser calls it the same site: the hardest case.
  await elsewhere.goto(`http://127.0.0.1:${(site.address() as AddressInfo).port}/`);

  const tried = await elsewhere.evaluate(async (to) => {
    const status = (path: string, options: RequestInit) =>
      fetch(to + path, { credentials: 'include', ...options }).then(
        (answer) => `answered ${answer.status}`,
        () => 'nothing',
      );
    const image = new Image();
    const loaded = new Promise((resolve) => {
      image.onload = () => resolve('loaded');
      image.onerror = () => resolve('nothing');
    });
    image.src = `${to}/proof/x/1.png`;
    const script = document.createElement('script');
    const ran = new Promise((resolve) => {
      script.onload = () => resolve('loaded');
      script.onerror = () => resolve('nothing');
    });
    script.src = `${to}/index.html`;
    document.head.append(script);
    return {
      call: await status('/call/app/begin', { method: 'POST', body: '{}' }),
      simple: await status('/session', { method: 'POST', body: '{"token":"x"}', mode: 'no-cors' }),
      page: await status('/', {}),
      events: await status('/events', {}),
      image: await loaded,
      script: await ran,
    };
  }, origin);
  expect(tried).toEqual({
    call: 'nothing',
    simple: 'nothing',
    page: 'nothing',
    events: 'nothing',
    image: 'nothing',
    script: 'nothing',
  });

  await elsewhere.setContent(`<iframe src="${origin}/"></iframe>`);
  await expect(elsewhere.frameLocator('iframe').locator('#window')).toHaveCount(0);
  await elsewhere.close();
  site.close();
});

test('a link that was used, and a page without a link, show what to do', async ({
  studio,
  page,
  context,
}) => {
  await studio.open();
  const origin = new URL(page.url()).origin;
  const second = await context.newPage();
  await second.goto(`${origin}/#token=used-up`);
  await expect(second.locator('body')).toContainText(/link/i);
  await second.close();
});
