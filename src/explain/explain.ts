/**
 * Content + facts + what-if (+ the standing right foot, when one is at hand) -> Explanation. Pure and plain: same input, same
 * output, and the output survives JSON. Without a foot at hand `prepareAnatomy()` must have run before.
 */
import type { Foot } from '../anatomy/types';
import type { Facts } from '../cases/schema';
import type { Content } from '../content/schema';
import { backFindings } from './back';
import { beamOf } from './beam';
import { ZONED_BONE, zonesOn } from './context';
import { feedingFor } from './feeding';
import { beamRunOf, howFindings } from './how';
import { optionsFindings } from './options';
import { drawnSide } from './side';
import { type Situation, situationOf } from './situation';
import { EXPLANATION_VERSION, type Explanation, type WhatIf } from './types';
import { whereFindings } from './where';
import { whyFindings } from './why';

const stationsOf = (s: Situation): Explanation['stations'] => {
  const run = beamRunOf(s);
  return run === null ? null : beamOf(s.context, run).table;
};

export const explain = (content: Content, facts: Facts, whatIf: WhatIf, foot?: Foot): Explanation => {
  const s = situationOf(content, facts, whatIf, foot);
  const bone = s.known.bone?.value ?? null;
  const zoned = bone === ZONED_BONE;
  return {
    version: EXPLANATION_VERSION,
    caseId: facts.caseId,
    demo: facts.demo,
    saidBy: facts.saidBy,
    whatIf,
    side: drawnSide(facts),
    foot: s.parameters,
    bone,
    breakAt: s.breakAt,
    injury: s.injury?.value ?? null,
    option: s.known.option?.value ?? null,
    age: facts.ageBand.state === 'stated' ? facts.ageBand.value : null,
    start: s.known.start === null ? null : { date: s.known.start.value, from: s.known.start.from },
    given: s.given,
    zones: zoned ? zonesOn(s.context.footFor(s.parameters), ZONED_BONE) : [],
    stations: stationsOf(s),
    feeding: zoned ? feedingFor(s.context, { foot: s.parameters, place: s.known.place?.value ?? null }) : null,
    draft: Object.values(content.reviews).some((review) => review.state !== 'reviewed'),
    questions: [
      { id: 'where', findings: whereFindings(s) },
      { id: 'how', findings: howFindings(s) },
      { id: 'why', findings: whyFindings(s) },
      { id: 'options', findings: optionsFindings(s) },
      { id: 'back', findings: backFindings(s) },
    ],
  };
};
