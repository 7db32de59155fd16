// Finding the pages of a stranger's PDF: the page tree, walked so that no loop, depth or number of pages can hang it.
import { type PDFArray, type PDFContext, PDFDict, type PDFObject } from 'pdf-lib';
import { type Fault, ok, type Result, refuse } from '../../fault/result.ts';
import type { ArtLimits } from './limits.ts';
import { asArray, asName, asNumber, follow, under } from './peek.ts';

/** The entries that a page takes from the nodes above it when it has none of its own. */
const INHERITED = ['Resources', 'MediaBox', 'CropBox', 'Rotate'] as const;

/** Nodes visited for each page that the limit allows; a tree needs less than two. */
const MAX_NODES_PER_PAGE = 10;

/** The entries of a page that may come from above, as they stand in the file. */
export type Inherited = Readonly<Partial<Record<(typeof INHERITED)[number], PDFObject>>>;

/** One page as it stands in the file. */
export interface Leaf {
  readonly dict: PDFDict;
  readonly inherited: Inherited;
}

interface Node {
  readonly dict: PDFDict;
  readonly kids: PDFArray;
  readonly inherited: Inherited;
  next: number;
}

/**
 * The pages in reading order. A kid that is lost or is no page keeps its number and stands as `undefined`.
 * A node that leads back to itself is passed over.
 *
 * @source ISO 32000-1, 7.7.3: page tree, and Table 30 for what is inherited.
 */
export function walkPages(
  context: PDFContext,
  root: PDFDict,
  limits: ArtLimits,
  art: string,
): Result<readonly (Leaf | undefined)[]> {
  const pages: (Leaf | undefined)[] = [];
  const path: Node[] = [];
  const above = new Set<PDFDict>();
  let visited = 0;

  /** Goes into a node, or notes the page that it is. */
  const meet = (value: PDFObject | undefined, passed: Inherited): Fault | undefined => {
    visited += 1;
    if (visited > limits.pages * MAX_NODES_PER_PAGE) return tangled(art);
    const dict = follow(context, value);
    if (!(dict instanceof PDFDict)) {
      pages.push(undefined);
    } else if (!above.has(dict)) {
      const inherited = inherit(dict, passed);
      const kids = asArray(context, under(dict, 'Kids'));
      if (kids === undefined) {
        if (asName(context, under(dict, 'Type')) !== 'Pages') pages.push({ dict, inherited });
      } else if (path.length === limits.treeDepth) {
        return tangled(art);
      } else {
        path.push({ dict, kids, inherited, next: 0 });
        above.add(dict);
      }
    }
    return pages.length > limits.pages ? tooManyPages(context, root, limits, art) : undefined;
  };

  let fault = meet(root, {});
  for (let node = path.at(-1); node !== undefined && fault === undefined; node = path.at(-1)) {
    if (node.next === node.kids.size()) {
      path.pop();
      above.delete(node.dict);
    } else {
      node.next += 1;
      fault = meet(node.kids.get(node.next - 1), node.inherited);
    }
  }
  return fault === undefined ? ok(pages) : refuse(fault);
}

function inherit(dict: PDFDict, passed: Inherited): Inherited {
  const own = INHERITED.map((key) => [key, under(dict, key) ?? passed[key]] as const);
  return Object.fromEntries(own.filter(([, value]) => value !== undefined));
}

function tooManyPages(context: PDFContext, root: PDFDict, limits: ArtLimits, art: string): Fault {
  const counted = asNumber(context, under(root, 'Count')) ?? 0;
  const many = counted > limits.pages ? `${counted}` : `more than ${limits.pages}`;
  return {
    code: 'art-too-large',
    message: `${art} has ${many} pages; at most ${limits.pages} are read.`,
    remedy: 'Export only the pages that this job prints into a PDF of their own.',
    where: art,
  };
}

function tangled(art: string): Fault {
  return {
    code: 'art-too-large',
    message: `The pages of ${art} are listed in a tangle that no program needs.`,
    remedy: 'Open the file in a PDF viewer and print it into a new PDF, or export it again.',
    where: art,
  };
}
