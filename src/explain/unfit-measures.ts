/**
 * Measures that are taken of one injury alone, stated of a case of another: the claim is of something else, or a slip. It is told as
 * that and left out. What can be measured of any break (a bend, a gap, a step, the pieces) fits them all.
 */
import type { Claim } from '../cases/schema';
import { bonesOf } from '../content/look-up';
import type { Content } from '../content/schema';
import type { FilmMeasure, InjuryId } from '../ids';
import { compute, find, message } from './build';
import type { ClaimTag, MessageOf } from './messages';
import type { Situation } from './situation';
import type { Finding } from './types';

type MeasureClaim = Extract<Claim, { subject: 'measure' }>;

/** Each is defined on the marks of one bone or joint; whose it is stands in the rules of the classes that ask for it. */
const OF_ONE_INJURY: ReadonlySet<FilmMeasure> = new Set<FilmMeasure>([
  'Boehler angle',
  'diastasis',
  'arch loss',
  'line depth',
]);

const injuriesWith = ({ injuries }: Pick<Content, 'injuries'>, what: FilmMeasure) =>
  injuries.filter(({ classification }) =>
    classification.some(({ rules = [] }) => rules.some((rule) => rule.by === 'measure' && rule.what === what)),
  );

/** Of which other injuries it is; null where it fits, and where neither class nor bone of the case is known. */
export const otherInjuriesOf = (s: Situation, what: FilmMeasure): readonly InjuryId[] | null => {
  if (!OF_ONE_INJURY.has(what)) return null;
  const owners = injuriesWith(s.context.content, what);
  const bone = s.known.bone?.value;
  const own = s.injury !== null && !s.injury.whatIf ? s.injury.value : null;
  const fits =
    own !== null
      ? owners.some(({ id }) => id === own)
      : bone === undefined || owners.some((i) => bonesOf(i).includes(bone));
  return fits ? null : owners.map(({ id }) => id);
};

export const measureOfOther = compute('where.measureOfOther', (_, inputs: MessageOf<'measureOfOther'>['args']) =>
  message('measureOfOther', inputs),
);

export const unfitMeasures = (s: Situation): readonly MeasureClaim[] =>
  s.facts.measures.filter(({ value }) => otherInjuriesOf(s, value.what) !== null);

export const unfitMeasureFindings = (s: Situation): readonly Finding[] =>
  unfitMeasures(s).map((claim, i) => {
    const tag: ClaimTag = { status: claim.status, claims: [claim.id] };
    return find(s.context, 'where', {
      id: `measureOfOther.${i + 1}`,
      depth: 'claim',
      compute: measureOfOther,
      inputs: { what: claim.value.what, injuries: otherInjuriesOf(s, claim.value.what) ?? [] },
      claims: [tag],
      unsure: 'contradiction',
    });
  });
