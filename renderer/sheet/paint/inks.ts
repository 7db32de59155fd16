// The colours that the bench is drawn with: those of the window, read where its style sheet names them.

export interface Inks {
  readonly surround: string;
  readonly paper: string;
  readonly onPaper: string;
  readonly ink: string;
  readonly soft: string;
  readonly panel: string;
  readonly line: string;
  readonly accent: string;
  readonly accentInk: string;
  readonly bad: string;
  readonly ask: string;
}

/** The inks as they are now; they change with the surround. */
export function readInks(of: Element): Inks {
  const style = getComputedStyle(of);
  const named = (name: string) => style.getPropertyValue(`--${name}`).trim();
  return {
    surround: named('surround'),
    paper: named('paper'),
    onPaper: named('on-paper'),
    ink: named('ink'),
    soft: named('ink-soft'),
    panel: named('panel'),
    line: named('line-strong'),
    accent: named('accent'),
    accentInk: named('accent-ink'),
    bad: named('bad'),
    ask: named('ask'),
  };
}

/** What lies on the paper is drawn in these whatever the surround, since paper stays white. */
export const ON_PAPER = { accent: '#1d5a80', bad: '#a31414', ask: '#7a4e00', dark: '#1b1b1b' } as const;
