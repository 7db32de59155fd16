// What the thread of the plan has worked out: the newest answer to each question. An older answer stays to be seen while a
// new one comes.
import { useEffect, useMemo, useRef, useState } from 'react';
import type { Brief } from '../../shared/job/brief.ts';
import type { Library } from '../../shared/library/library.ts';
import type { CostCurve, Quantities } from '../../shared/plan/costCurve.ts';
import type { LaidPlan } from '../../shared/plan/layOutCandidates.ts';
import type { WhatIf } from '../../shared/plan/whatIf.ts';
import type { CoverageOfFaces } from './coverageOfFaces.ts';
import type { PlanAnswer, PlanAsked } from './planWorker.ts';

/** A thread that answers; the answer to a question is handed on unless a newer one of its kind was asked meanwhile. */
class PlanThread {
  readonly #worker = new Worker(new URL('./planWorker.ts', import.meta.url), { type: 'module' });
  readonly #newest = { layouts: 0, curves: 0 };

  constructor(hear: (answer: PlanAnswer) => void) {
    this.#worker.onmessage = ({ data }: MessageEvent<PlanAnswer>) => {
      if (data.number === this.#newest[data.ask]) hear(data);
    };
  }

  ask(kind: PlanAsked['ask'], question: (number: number) => PlanAsked): void {
    this.#newest[kind] += 1;
    this.#worker.postMessage(question(this.#newest[kind]));
  }

  end(): void {
    this.#worker.terminate();
  }
}

export interface Worked {
  readonly plan: LaidPlan | undefined;
  readonly curves: readonly CostCurve[];
}

/** Lays out whenever the brief or the library changes, and prices all quantities whenever anything does. */
export function usePlanWorker(
  brief: Brief,
  library: Library,
  coverage: CoverageOfFaces,
  whatIf: WhatIf,
  { from, to }: Quantities,
): Worked {
  const [plan, setPlan] = useState<LaidPlan | undefined>();
  const [curves, setCurves] = useState<readonly CostCurve[]>([]);
  const thread = useRef<PlanThread | undefined>(undefined);
  useEffect(() => {
    const started = new PlanThread((answer) => {
      if (answer.ask === 'layouts') setPlan(answer.plan);
      else setCurves(answer.curves);
    });
    thread.current = started;
    return () => started.end();
  }, []);
  useEffect(() => {
    thread.current?.ask('layouts', (number) => ({ number, ask: 'layouts', brief, library }));
  }, [brief, library]);
  useEffect(() => {
    if (plan === undefined) return;
    const quantities = { from, to };
    thread.current?.ask('curves', (number) => ({
      number,
      ask: 'curves',
      plan,
      library,
      coverage,
      quantities,
      whatIf,
    }));
  }, [plan, library, coverage, whatIf, from, to]);
  return useMemo(() => ({ plan, curves }), [plan, curves]);
}
