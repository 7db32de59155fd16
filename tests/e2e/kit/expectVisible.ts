// What can really be seen: every text on the screen has a box of a real size, cut off by nothing, and rows are as wide as
// their list; every field and button can be seen and hit. Roles and words alone do not tell that.
import type { Page } from '@playwright/test';
import { expect } from './studio.ts';

/** Fails with a sentence for each text, row and panel that cannot be seen as it should be. */
export async function expectVisible(page: Page): Promise<void> {
  expect(await hiddenThings(page)).toEqual([]);
}

/** What cannot be seen, though it should be. What is there for screen readers alone does not count. */
export function hiddenThings(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    /** So much may be cut off by rounding, in px. */
    const SLACK = 2;
    /** A text that ends in an ellipsis shows at least so much of itself, in px. */
    const LEAST_SEEN = 40;
    /** What is pressed, chosen or scrolled measures at least so much, in px; less is squeezed. */
    const LEAST_HELD = 14;
    /** A row beside other rows is at least so wide, in px. */
    const LEAST_ROW = 20;
    const ROWS = '[role=option], [role=row], li, tr';
    const LISTS = '[role=listbox], [role=grid], [role=table], ul, ol, table';

    const found: string[] = [];
    const say = (text: string) => `"${text.length > 50 ? `${text.slice(0, 50)}…` : text}"`;
    /** Hidden in the usual way from eyes alone: taken out of the flow and clipped to a pixel. */
    const isClippedAway = (element: Element) => {
      const { position, clip, clipPath } = getComputedStyle(element);
      return position === 'absolute' && (clip !== 'auto' || clipPath !== 'none');
    };
    const isForReaders = (element: Element) =>
      element.closest('.unseen, [aria-hidden=true] svg') !== null ||
      [element, ...ancestors(element)].some(isClippedAway);
    const isShown = (element: Element) =>
      element.checkVisibility({ visibilityProperty: true, opacityProperty: true });
    const fullyNamed = (element: Element, text: string) =>
      [element, ...ancestors(element)].some((one) =>
        ['title', 'aria-label'].some((name) => one.getAttribute(name)?.includes(text)),
      );

    type Box = Pick<DOMRect, 'left' | 'top' | 'right' | 'bottom'>;
    function ancestors(element: Element): Element[] {
      const all: Element[] = [];
      for (let at = element.parentElement; at !== null; at = at.parentElement) all.push(at);
      return all;
    }
    const scrolls = (overflow: string) => overflow === 'auto' || overflow === 'scroll';
    const clips = (overflow: string) => overflow === 'hidden' || overflow === 'clip';

    /** What of a scroller (px of the screen) its content can be brought into, though it lies beyond its room now. */
    function reachOf(scroller: Element) {
      const { left, top } = scroller.getBoundingClientRect();
      const [x, y] = [left + scroller.clientLeft, top + scroller.clientTop];
      const [fromX, fromY] = [x - scroller.scrollLeft, y - scroller.scrollTop];
      return {
        room: { left: x, top: y, right: x + scroller.clientWidth, bottom: y + scroller.clientHeight },
        whole: {
          left: fromX,
          top: fromY,
          right: fromX + scroller.scrollWidth,
          bottom: fromY + scroller.scrollHeight,
        },
      };
    }
    const beyond = (box: Box, room: Box) => ({
      across: Math.max(0, room.left - box.left) + Math.max(0, box.right - room.right),
      along: Math.max(0, room.top - box.top) + Math.max(0, box.bottom - room.bottom),
    });

    /**
     * How much of a box (px) is cut off for good: by an ancestor that hides it, by the edge of the window, or beyond
     * what can be scrolled to. What is scrolled is seen through the scroller, so that has to be seen then.
     */
    function cutOff(element: Element, box: Box): { across: number; along: number; by: Element | undefined } {
      let [across, along] = [0, 0];
      let by: Element | undefined;
      let seen = { left: box.left, top: box.top, right: box.right, bottom: box.bottom };
      for (const at of [element, ...ancestors(element)]) {
        const style = getComputedStyle(at);
        // Inline boxes clip nothing.
        if (style.display !== 'inline') {
          const { room, whole } = reachOf(at);
          const hidden = beyond(seen, at.getBoundingClientRect());
          const unreached = beyond(seen, whole);
          if (clips(style.overflowX) && hidden.across > across) [across, by] = [hidden.across, at];
          if (clips(style.overflowY) && hidden.along > along) [along, by] = [hidden.along, at];
          if (scrolls(style.overflowX)) {
            across = Math.max(across, unreached.across, LEAST_HELD - (room.right - room.left));
            seen = { ...seen, left: room.left, right: room.right };
          }
          if (scrolls(style.overflowY)) {
            along = Math.max(along, unreached.along, LEAST_HELD - (room.bottom - room.top));
            seen = { ...seen, top: room.top, bottom: room.bottom };
          }
        }
        if (style.position === 'fixed') break;
      }
      across = Math.max(across, -seen.left, seen.right - innerWidth);
      along = Math.max(along, -seen.top, seen.bottom - innerHeight);
      return { across, along, by };
    }

    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      const text = node.textContent?.trim() ?? '';
      const element = node.parentElement;
      if (text === '' || element === null || element.closest('script, style, option') !== null) continue;
      if (isForReaders(element) || !isShown(element)) continue;
      const range = document.createRange();
      range.selectNodeContents(node);
      const box = range.getBoundingClientRect();
      if (box.width < 1 || box.height < 1) {
        found.push(`${say(text)} has no room.`);
        continue;
      }
      const { across, along, by } = cutOff(element, box);
      const shortened = by !== undefined && getComputedStyle(by).textOverflow === 'ellipsis';
      if (shortened && along <= SLACK) {
        const seen = box.width - across;
        if (across > SLACK && (seen < LEAST_SEEN || !fullyNamed(element, text)))
          found.push(`${say(text)} shows ${Math.round(seen)} px and is told in full nowhere.`);
      } else if (across > SLACK || along > SLACK) {
        found.push(`${say(text)} is cut off by ${Math.round(Math.max(across, along))} px.`);
      }
      for (const { index, 0: word } of (node.textContent ?? '').matchAll(/[\p{L}\d]{4,}/gu)) {
        range.setStart(node, index);
        range.setEnd(node, index + word.length);
        if (new Set([...range.getClientRects()].map((rect) => Math.round(rect.top))).size > 1) {
          found.push(`${say(word)} is broken within the word.`);
        }
      }
    }

    for (const list of document.querySelectorAll(LISTS)) {
      if (isForReaders(list) || !isShown(list)) continue;
      const { width } = list.getBoundingClientRect();
      for (const row of list.querySelectorAll(ROWS)) {
        if (row.closest(LISTS) !== list || isForReaders(row) || !isShown(row)) continue;
        const own = row.getBoundingClientRect().width;
        const flows = getComputedStyle(row.parentElement ?? row).display;
        const least = /flex|grid/.test(flows) ? LEAST_ROW : width / 2;
        if (own < least && getComputedStyle(row).display !== 'inline')
          found.push(
            `A row of ${list.getAttribute('aria-label') ?? list.tagName} is ${Math.round(own)} px wide.`,
          );
      }
    }
    for (const held of document.querySelectorAll<HTMLElement>('input, select, textarea, button')) {
      // The browser's own field behind a drawn one is for nobody's eyes.
      if (held.closest('[aria-hidden=true]') !== null || isForReaders(held) || !isShown(held)) continue;
      const name = held.getAttribute('aria-label') ?? held.closest('label')?.textContent ?? held.textContent;
      const what = `The ${held.tagName.toLowerCase()} ${say((name ?? '').trim())}`;
      const box = held.getBoundingClientRect();
      const isTyped = held.matches(
        'input:not([type=checkbox], [type=radio], [type=range]), textarea, select',
      );
      const { across, along } = cutOff(held.parentElement ?? held, box);
      if (box.width < (isTyped ? LEAST_SEEN : LEAST_HELD) || box.height < LEAST_HELD)
        found.push(`${what} is ${Math.round(box.width)} x ${Math.round(box.height)} px.`);
      else if (across > SLACK || along > SLACK)
        found.push(`${what} is cut off by ${Math.round(Math.max(across, along))} px.`);
    }
    for (const panel of document.querySelectorAll('section[aria-label], aside, [role=dialog]')) {
      if (isForReaders(panel) || !isShown(panel)) continue;
      const { width, height } = panel.getBoundingClientRect();
      if (width < 40 || height < 16)
        found.push(
          `The panel ${panel.getAttribute('aria-label')} is ${Math.round(width)} x ${Math.round(height)} px.`,
        );
    }
    return [...new Set(found)];
  });
}
