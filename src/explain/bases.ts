/** Every registered computation by its id, and running one again: the answer to "how do you know?" that a test holds us to. */
import type { Foot } from '../anatomy/types';
import type { Content } from '../content/schema';
import * as against from './against-breaks';
import * as back from './back-computes';
import * as depends from './back-depends';
import type { Compute } from './build';
import * as claims from './claims';
import { type Context, contextOf } from './context';
import * as contradictions from './contradictions';
import * as disputed from './disputed-class';
import * as factors from './factor-findings';
import * as films from './film-scores';
import * as forecast from './forecast-computes';
import * as how from './how-computes';
import * as hangs from './how-hangs';
import * as kept from './kept-forecasts';
import type { Message } from './messages';
import * as check from './next-check';
import * as options from './options';
import * as own from './own-counts';
import * as repeated from './repeated';
import * as review from './review-findings';
import * as sooner from './sooner';
import * as stages from './stage-computes';
import * as apart from './stands-apart';
import * as stations from './station-computes';
import * as supports from './support-computes';
import * as texts from './texts';
import * as timetable from './timetable';
import * as troubles from './troubles';
import type { Basis } from './types';
import * as unfit from './unfit-measures';
import * as where from './where-computes';
import * as why from './why';

type AnyCompute = Compute<never>;

const isCompute = (value: unknown): value is AnyCompute =>
  typeof value === 'object' && value !== null && 'id' in value && 'run' in value && typeof value.run === 'function';

const registry: ReadonlyMap<string, AnyCompute> = new Map(
  [
    against,
    where,
    how,
    hangs,
    why,
    options,
    supports,
    repeated,
    back,
    depends,
    disputed,
    factors,
    films,
    review,
    forecast,
    kept,
    check,
    timetable,
    sooner,
    stages,
    apart,
    stations,
    unfit,
    claims,
    texts,
    troubles,
    own,
    contradictions,
  ]
    .flatMap((module): unknown[] => Object.values(module))
    .filter(isCompute)
    .map((c) => [c.id, c]),
);

export const COMPUTE_IDS: readonly string[] = [...registry.keys()];

/** Runs a basis again. Throws RangeError for a computation nobody registered. Inputs come from a Finding, and so fit. */
export const rerun = (basis: Pick<Basis, 'compute' | 'inputs'>, content: Content, foot?: Foot): Message => {
  const found = registry.get(basis.compute);
  if (found === undefined) throw new RangeError(`no computation is registered as ${basis.compute}`);
  const context: Context = contextOf(content, foot);
  return found.run(context, basis.inputs as never);
};
