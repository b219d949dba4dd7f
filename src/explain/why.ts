/** Question 3: why is this spot slow to heal? Who feeds it, the border between territories, what this break leaves. */
import type { RegionId } from '../ids';
import { compute, find, givenOf, message } from './build';
import { zoneAtStation } from './context';
import { evidenceOfFeeding, type FeedingRun, feedingFor, isFed } from './feeding';
import type { Given } from './messages';
import { tenth } from './place';
import { tagOf } from './resolve';
import type { Situation } from './situation';
import { textFinding } from './texts';
import type { Finding, Shown } from './types';

export const whyUnknown = compute('why.unknown', () => message('whyUnknown', {}));

export const fedBy = compute('why.fedBy', (context, inputs: FeedingRun & { readonly region: RegionId }) => {
  const part = feedingFor(context, { ...inputs, place: null }).parts.find((p) => p.region === inputs.region);
  if (part === undefined) throw new RangeError(`no part ${inputs.region} in the feeding table`);
  const main = context.content.vessels
    .filter((v) => v.feeds.some((f) => f.region === inputs.region && f.main))
    .map((v) => v.id);
  return message('fedBy', {
    region: inputs.region,
    main: part.feeders.filter((id) => main.includes(id)),
    others: part.feeders.filter((id) => !main.includes(id)),
  });
});

export const feedingBorder = compute('why.border', (context, inputs: FeedingRun) => {
  const { borderMm, bone } = feedingFor(context, inputs);
  const region = borderMm === null ? null : zoneAtStation(context.footFor(inputs.foot), bone, borderMm.sMm);
  if (borderMm === null || region === null) throw new RangeError('no border between territories on this bone');
  return message('feedingBorder', { bone, at: { value: tenth(borderMm.sMm), unit: 'mm' }, region });
});

export const breakLeaves = compute('why.breakLeaves', (context, inputs: FeedingRun & { readonly given: Given }) => {
  const { parts } = feedingFor(context, inputs);
  return message('breakLeaves', {
    given: inputs.given,
    parts: parts.map(({ region, state, remaining }) => ({ region, state, remaining })),
  });
});

const feedingFindings = (s: Situation): readonly Finding[] => {
  const { context } = s;
  const bone = s.known.bone?.value ?? null;
  if (!isFed(context.content, bone)) return [];
  const whole: FeedingRun = { foot: s.parameters, bone, place: null };
  const shows: readonly Shown[] = [{ kind: 'feeding', bone }];
  const found: Finding[] = [];
  const table = feedingFor(context, whole);
  const whatIf = s.shapeWhatIf || (s.region?.whatIf ?? false);
  if (s.region !== null && table.parts.some((p) => p.region === s.region?.value)) {
    const region = s.region.value;
    const feeders = table.parts.find((p) => p.region === region)?.feeders ?? [];
    found.push(
      find(context, 'why', {
        id: 'fedBy',
        depth: 'more',
        shows: [...shows, ...feeders.map((vessel): Shown => ({ kind: 'vessel', bone, vessel }))],
        compute: fedBy,
        inputs: { ...whole, region },
        evidence: evidenceOfFeeding(context.content, bone, [region]),
        whatIf,
      }),
    );
  }
  if (table.borderMm !== null)
    found.push(
      find(context, 'why', {
        id: 'border',
        depth: 'more',
        shows,
        compute: feedingBorder,
        inputs: whole,
        evidence: evidenceOfFeeding(context.content, bone),
        models: ['feedingRule', 'drawnFoot'],
        whatIf: s.shapeWhatIf,
      }),
    );
  if (s.breakAt !== null && s.known.place !== null)
    found.push(
      find(context, 'why', {
        id: 'breakLeaves',
        depth: 'more',
        shows: [...shows, { kind: 'break' }],
        compute: breakLeaves,
        inputs: { foot: s.parameters, bone, place: s.known.place.value, given: givenOf(s.breakTag) },
        evidence: evidenceOfFeeding(context.content, bone),
        claims: [s.breakTag],
        models: ['feedingRule', 'drawnFoot'],
        whatIf,
      }),
    );
  return found;
};

export const whyFindings = (s: Situation): readonly Finding[] => {
  const { context } = s;
  const headline =
    s.injury === null
      ? [
          find(context, 'why', {
            id: 'headline',
            depth: 'sentence',
            compute: whyUnknown,
            inputs: {},
            unsure: 'notStated',
          }),
        ]
      : textFinding(context, 'why', {
          id: 'headline',
          depth: 'sentence',
          at: { kind: 'injury', injury: s.injury.value, part: 'heals' },
          shows:
            s.region === null || s.known.bone === null
              ? []
              : [{ kind: 'region', bone: s.known.bone.value, region: s.region.value }],
          claims: [tagOf(s.injury)],
          whatIf: s.injury.whatIf,
        });
  return [...headline, ...feedingFindings(s)];
};
