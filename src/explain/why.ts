/** Question 3: why does it heal as it does? Who feeds it, the border between territories, what this break leaves. */
import type { BoneId, RegionId } from '../ids';
import { compute, find, givenOf, message } from './build';
import { zoneAtStation, zonesOn } from './context';
import { factorTexts } from './factor-texts';
import {
  evidenceOfFeeding,
  type FeedingRun,
  feedingFor,
  feedingRunOf,
  isFed,
  takenIn,
  tornIn,
  wholeBone,
} from './feeding';
import type { Given } from './messages';
import { tenth } from './place';
import { tagOf } from './resolve';
import type { Situation } from './situation';
import { textFinding } from './texts';
import type { Finding, Shown } from './types';
import { takenBy, tornBy, triedAt } from './vessel-choices';

export const whyUnknown = compute('why.unknown', () => message('whyUnknown', {}));

export const feedingUnknown = compute('why.noVessels', (_, inputs: { readonly bone: BoneId }) =>
  message('feedingUnknown', inputs),
);

type FedRun = FeedingRun & { readonly region: RegionId | null };

export const fedBy = compute('why.fedBy', (context, inputs: FedRun) => {
  const part = feedingFor(context, wholeBone(inputs)).parts.find((p) => p.region === inputs.region);
  if (part === undefined) throw new RangeError(`no part ${inputs.region} in the feeding table`);
  const [largest] = part.territories;
  return message('fedBy', {
    region: inputs.region,
    main: part.main,
    others: part.feeders.filter((id) => !part.main.includes(id)),
    mainBy: part.mainBy,
    nearest: largest === undefined || part.main.includes(largest.vessel) ? null : largest.vessel,
  });
});

export const feedingBorder = compute('why.border', (context, inputs: FeedingRun & { readonly index: number }) => {
  const { borders, bone } = feedingFor(context, inputs);
  const border = borders[inputs.index];
  const region = border === undefined ? null : zoneAtStation(context.footFor(inputs.foot), bone, border.sMm);
  if (border === undefined || region === null) throw new RangeError('no such border between territories on this bone');
  return message('feedingBorder', {
    bone,
    between: border.between,
    at: { value: tenth(border.sMm), unit: 'mm' },
    halfWidth: { value: tenth(border.halfWidthMm), unit: 'mm' },
    region,
  });
});

export const breakLeaves = compute('why.breakLeaves', (context, inputs: FeedingRun & { readonly given: Given }) => {
  const { parts } = feedingFor(context, inputs);
  return message('breakLeaves', {
    given: inputs.given,
    torn: tornIn(context.content, inputs),
    taken: takenIn(context.content, inputs),
    parts: parts.map(({ region, state, remaining, fromBorder }) => ({
      region,
      state,
      remaining: [...remaining, ...fromBorder],
    })),
  });
});

const noVessels = (s: Situation, bone: BoneId | null): readonly Finding[] =>
  bone === null
    ? []
    : [
        find(s.context, 'why', {
          id: 'noVessels',
          depth: 'more',
          compute: feedingUnknown,
          inputs: { bone },
          unsure: 'notStated',
        }),
      ];

const MODELS = ['feedingRule', 'drawnFoot'] as const;

const fedByFinding = (s: Situation, run: FeedingRun, region: RegionId | null, whatIf: boolean): readonly Finding[] => {
  const { context } = s;
  const whole = wholeBone(run);
  const part = feedingFor(context, whole).parts.find((p) => p.region === region);
  if (part === undefined) return [];
  return [
    find(context, 'why', {
      id: 'fedBy',
      depth: 'more',
      shows: [
        { kind: 'feeding', bone: run.bone },
        ...part.feeders.map((vessel): Shown => ({ kind: 'vessel', bone: run.bone, vessel })),
      ],
      compute: fedBy,
      inputs: { ...whole, region },
      evidence: evidenceOfFeeding(context.content, run, part.feeders),
      models: part.mainBy === 'source' ? ['drawnFoot'] : MODELS,
      whatIf,
    }),
  ];
};

/** The first border is told to everybody; the others, far from most breaks, in study. */
const borderFindings = (s: Situation, run: FeedingRun, whatIf: boolean): readonly Finding[] => {
  const whole = wholeBone(run);
  return feedingFor(s.context, whole).borders.map((border, index) =>
    find(s.context, 'why', {
      id: index === 0 ? 'border' : `border.${index + 1}`,
      depth: 'more',
      shows: [{ kind: 'feeding', bone: run.bone }],
      compute: feedingBorder,
      inputs: { ...whole, index },
      evidence: evidenceOfFeeding(s.context.content, run, border.between),
      models: MODELS,
      whatIf,
      ...(index === 0 ? {} : { readers: ['study'] as const }),
    }),
  );
};

const feedingFindings = (s: Situation): readonly Finding[] => {
  const { context } = s;
  const bone = s.known.bone?.value ?? null;
  if (!isFed(context.content, bone)) return noVessels(s, bone);
  const run = feedingRunOf(s, bone);
  const tried = s.shapeWhatIf || triedAt(context.content, bone, run.choices).length > 0;
  const whatIf = tried || (s.region?.whatIf ?? false);
  const named = zonesOn(context.footFor(s.parameters), bone).length > 0;
  const found: Finding[] = [
    ...(named && s.region === null ? [] : fedByFinding(s, run, s.region?.value ?? null, whatIf)),
    ...borderFindings(s, run, tried),
  ];
  const torn = tornBy(s);
  const taken = takenBy(s, bone);
  if ((s.breakAt !== null && run.place !== null) || taken !== null || tornIn(context.content, run).length > 0)
    found.push(
      find(context, 'why', {
        id: 'breakLeaves',
        depth: 'more',
        shows: [{ kind: 'feeding', bone }, ...(s.breakAt === null ? [] : [{ kind: 'break' } as const])],
        compute: breakLeaves,
        inputs: { ...run, given: givenOf(s.breakTag, ...torn.claims, taken?.claim ?? null) },
        evidence: [...evidenceOfFeeding(context.content, run), ...(taken === null ? [] : [taken.evidence])],
        claims: [s.breakTag, ...torn.claims, ...(taken === null ? [] : [taken.claim])],
        models: taken === null ? MODELS : [...MODELS, 'operationTakes'],
        whatIf,
      }),
    );
  if (taken !== null)
    found.push(
      ...textFinding(context, 'why', {
        id: 'operationTakes',
        at: { kind: 'optionTakes', option: taken.option },
        shows: [{ kind: 'feeding', bone }],
        claims: [taken.claim],
        models: ['operationTakes'],
      }),
    );
  found.push(
    ...textFinding(context, 'why', {
      id: 'supply',
      at: { kind: 'supply', bone },
      shows: [{ kind: 'feeding', bone }],
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
  return [...headline, ...feedingFindings(s), ...factorTexts(s, 'why')];
};
