// What can really be seen: every text on the screen has a box of a real size, cut off by nothing, and rows are as wide as
// their list. Roles and words alone do not tell that.
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

    function ancestors(element: Element): Element[] {
      const all: Element[] = [];
      for (let at = element.parentElement; at !== null; at = at.parentElement) all.push(at);
      return all;
    }
    const scrolls = (overflow: string) => overflow === 'auto' || overflow === 'scroll';
    const clips = (overflow: string) => overflow === 'hidden' || overflow === 'clip';

    /** How much of a box (px) is cut off for good: by an ancestor that hides it, or by the edge of the window. */
    function cutOff(
      element: Element,
      box: DOMRect,
    ): { across: number; along: number; by: Element | undefined } {
      let [across, along] = [0, 0];
      let by: Element | undefined;
      let [freeAcross, freeAlong] = [false, false];
      for (const at of [element, ...ancestors(element)]) {
        const style = getComputedStyle(at);
        const room = at.getBoundingClientRect();
        const [beyondAcross, beyondAlong] = [
          Math.max(0, room.left - box.left) + Math.max(0, box.right - room.right),
          Math.max(0, room.top - box.top) + Math.max(0, box.bottom - room.bottom),
        ];
        // Inline boxes clip nothing.
        if (style.display !== 'inline') {
          if (!freeAcross && clips(style.overflowX) && beyondAcross > across)
            [across, by] = [beyondAcross, at];
          if (!freeAlong && clips(style.overflowY) && beyondAlong > along) [along, by] = [beyondAlong, at];
        }
        freeAcross ||= scrolls(style.overflowX);
        freeAlong ||= scrolls(style.overflowY);
        if (style.position === 'fixed') break;
      }
      if (!freeAcross) across = Math.max(across, -box.left, box.right - innerWidth);
      if (!freeAlong) along = Math.max(along, -box.top, box.bottom - innerHeight);
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
        if (own < width / 2 && !/flex|grid/.test(flows) && getComputedStyle(row).display !== 'inline')
          found.push(
            `A row of ${list.getAttribute('aria-label') ?? list.tagName} is ${Math.round(own)} px wide.`,
          );
      }
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
