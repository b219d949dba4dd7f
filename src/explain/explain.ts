/**
 * Content + facts + what-if (+ the standing right foot, when one is at hand) -> Explanation. Pure and plain: same input, same
 * output, and the output survives JSON. Without a foot at hand `prepareAnatomy()` must have run before.
 */
import type { Foot } from '../anatomy/types';
import type { Facts } from '../cases/schema';
import type { Content } from '../content/schema';
import type { QuestionId } from '../ids';
import { ranksOnly } from '../mechanics';
import { backFindings } from './back';
import { zonesOn } from './context';
import { contradictionFindings } from './contradictions';
import { feedingFor, feedingRunOf, isFed } from './feeding';
import { forecastsOf } from './forecast';
import { howFindings, loadRunOf } from './how';
import { tooManyBeyond, tooManyBeyondItself } from './how-computes';
import { loadChecksOn } from './load-checks';
import { bandsFor, contributorsFor, REFERENCE_ACTIVITY, rayOf, referenceRun, toldLoads } from './loads';
import { optionsFindings } from './options';
import { drawnSide } from './side';
import { type Situation, situationOf, youngestOf } from './situation';
import { toldTo } from './told-to';
import { troubleFindings } from './troubles';
import {
  type BandsAsked,
  type BreakAt,
  EXPLANATION_VERSION,
  type Explanation,
  type Finding,
  type Question,
  type WhatIf,
} from './types';
import { whereFindings } from './where';
import { whyFindings } from './why';

const loadsOf = (s: Situation, bands: BandsAsked): Explanation['loads'] => {
  const run = loadRunOf(s);
  if (run === null) return null;
  const [told, reference] = [toldLoads(s.context, run), toldLoads(s.context, referenceRun(run))];
  if ('problem' in told || 'problem' in reference) return null;
  const ray = rayOf(run.bone);
  const all = bands === 'all';
  const bandsTold = ray === null || bands === 'none' ? null : bandsFor(s.context, run, ray);
  const ranks =
    ranksOnly([...told.loads.flags, ...reference.loads.flags]) || (bandsTold !== null && tooManyBeyond(bandsTold));
  return {
    activity: run.activity,
    reference: REFERENCE_ACTIVITY,
    told: told.loads,
    ranksOnly: ranks,
    forcesRank: ranksOnly(told.loads.flags) || (bandsTold !== null && tooManyBeyondItself(bandsTold)),
    referenceMPa: (ranks ? told : reference).loads.tables.map((table) => table.peakTension.mpa),
    bands: bandsTold,
    contributors: ray === null || !all ? null : contributorsFor(s.context, run, ray),
    checks: all ? loadChecksOn(s.context, run) : null,
  };
};

/** Findings that need an ensemble that was not asked for say that they are still to come. */
export interface ExplainOptions {
  readonly bands: BandsAsked;
}

export const explain = (
  content: Content,
  facts: Facts,
  whatIf: WhatIf,
  foot?: Foot,
  { bands }: ExplainOptions = { bands: 'none' },
): Explanation => {
  const s = situationOf(content, facts, whatIf, foot);
  const bone = s.known.bone?.value ?? null;
  const loads = loadsOf(s, bands);
  const forecasts = forecastsOf(s);
  const about = (id: QuestionId, found: readonly Finding[]): Question => ({
    id,
    findings: [...found, ...contradictionFindings(s, id)].map((finding) => toldTo(s, finding)),
  });
  return {
    version: EXPLANATION_VERSION,
    caseId: facts.caseId,
    demo: facts.demo,
    saidBy: facts.saidBy,
    whatIf,
    side: drawnSide(facts),
    foot: s.parameters,
    bone,
    part:
      s.region === null
        ? null
        : { region: s.region.value, status: s.breakTag.status as BreakAt['status'], whatIf: s.region.whatIf },
    breakAt: s.breakAt,
    injury: s.injury?.value ?? null,
    option: s.known.option?.value ?? null,
    age: youngestOf(facts),
    start: s.known.start === null ? null : { date: s.known.start.value, from: s.known.start.from },
    given: s.given,
    zones: bone === null ? [] : zonesOn(s.context.footFor(s.parameters), bone),
    stations: loads?.told.tables.find((table) => table.bone === bone) ?? null,
    loads,
    feeding: isFed(content, bone) ? feedingFor(s.context, feedingRunOf(s, bone)) : null,
    forecasts: forecasts.map(({ explained }) => explained),
    draft: Object.values(content.reviews).some((review) => review.state !== 'reviewed'),
    questions: [
      about('where', whereFindings(s)),
      about('how', howFindings(s, bands)),
      about('why', [...whyFindings(s), ...troubleFindings(s, 'why')]),
      about('options', optionsFindings(s, bands === 'all')),
      about('back', [...backFindings(s, forecasts, bands === 'all'), ...troubleFindings(s, 'back')]),
    ],
  };
};
