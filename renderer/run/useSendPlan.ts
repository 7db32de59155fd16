// What sending the job as it is now would write, asked anew when the job, the folder or what lies in it has changed.
import { useEffect, useState } from 'react';
import type { SendPlan } from '../../shared/contract/sending.ts';
import type { Result } from '../../shared/fault/result.ts';
import { planSending } from '../desk/sendings.ts';
import { useApp, useJob } from '../state/store.ts';

/** Nothing as long as no folder is chosen, and until the host has answered for the first time. */
export function useSendPlan(): Result<SendPlan> | undefined {
  const job = useJob();
  const folder = useApp((s) => s.settings.ripFolder);
  const at = useApp((s) => s.sending?.state.at);
  const [plan, setPlan] = useState<Result<SendPlan> | undefined>(undefined);
  // biome-ignore lint/correctness/useExhaustiveDependencies: each of the three may change what is written or replaced.
  useEffect(() => {
    let wanted = true;
    void planSending(job).then((planned) => {
      if (wanted) setPlan(planned);
    });
    return () => {
      wanted = false;
    };
  }, [job, folder, at]);
  return plan;
}
