// The benchmarks: all of them, or those that are named. Times are of one run on one machine: read the ratios.
import { benchCli } from './cli.ts';
import { benchCutting } from './cutting.ts';
import { benchDrag } from './drag.ts';
import { benchGang } from './gang.ts';
import { benchLayout } from './layout.ts';
import { benchPictures } from './pictures.ts';
import { benchPlan } from './plan.ts';
import { benchSending } from './send.ts';

const BENCHES: Readonly<Record<string, () => void | Promise<void>>> = {
  cli: benchCli,
  layout: benchLayout,
  cutting: benchCutting,
  plan: benchPlan,
  sending: benchSending,
  drag: benchDrag,
  pictures: benchPictures,
  gang: benchGang,
};

const named = process.argv.slice(2);
const unknown = named.filter((name) => BENCHES[name] === undefined);
if (unknown.length > 0) {
  console.error(`There is no benchmark "${unknown[0]}"; there are ${Object.keys(BENCHES).join(', ')}.`);
  process.exit(2);
}
for (const [name, bench] of Object.entries(BENCHES)) {
  if (named.length === 0 || named.includes(name)) await bench();
}
