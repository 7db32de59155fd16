// The stage that is on the screen.
import type { ComponentType } from 'react';
import { ArtStage } from '../art/ArtStage.tsx';
import { Bench } from '../bench/Bench.tsx';
import { LightTable } from '../lighttable/LightTable.tsx';
import { PlanStage } from '../plan/PlanStage.tsx';
import { RunStage } from '../run/RunStage.tsx';
import { useApp } from '../state/store.ts';
import type { Stage } from '../state/viewState.ts';

const STAGE: Readonly<Record<Stage, ComponentType>> = {
  art: ArtStage,
  plan: PlanStage,
  bench: Bench,
  'light-table': LightTable,
  run: RunStage,
};

export function StageShown() {
  const Shown = STAGE[useApp((s) => s.stage)];
  return <Shown />;
}
