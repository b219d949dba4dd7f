/**
 * Where the frame pulls hardest, against where breaks of a class are found: told from the ensemble, draw by draw. What the told values
 * say counts only where four fifths of the draws say the same.
 */
import { homeOn } from '../content/look-up';
import type { InjuryId, RegionId } from '../ids';
import { ENOUGH_AGREEMENT, type PullPlace } from '../mechanics';
import { statedBy } from './agreed';
import { compute, message } from './build';
import { type Context, zonesOn } from './context';
import { type BoneRun, bandsOf, beamStretches, regionAt, tableOf } from './how-computes';
import { plateauInBands, spokenStretch } from './stretches';

/** What one draw says. */
export interface PlaceSaid {
  /** The parts that nine tenths of its largest pull cover; empty where the bone has no parts. */
  readonly parts: readonly RegionId[];
  /** Nine tenths of it reach where such breaks are found. */
  readonly carries: boolean;
  /** Its largest pull lies at the first or last place of the theory: beyond, it may grow on for all that is known. */
  readonly edge: boolean;
}

/**
 * `draws` counts those without an answer too: they agree with nothing. A part is named where enough draws cover it, and as one that may
 * be covered unless enough of them do not.
 */
export const judged = (told: PlaceSaid, said: readonly PlaceSaid[], draws: number) => {
  const share = (holds: (one: PlaceSaid) => boolean): number => said.filter(holds).length / draws;
  const named = [...new Set([told, ...said].flatMap(({ parts }) => parts))];
  const covers = (part: RegionId): number => share(({ parts }) => parts.includes(part));
  const leaves = (part: RegionId): number => share(({ parts }) => !parts.includes(part));
  const { holds, agreed } = statedBy({
    holds: told.carries,
    share: share(({ carries }) => carries === told.carries),
    against: share(({ carries }) => carries !== told.carries),
  });
  return {
    parts: named.filter((part) => covers(part) >= ENOUGH_AGREEMENT),
    perhaps: named.filter((part) => covers(part) < ENOUGH_AGREEMENT && leaves(part) < ENOUGH_AGREEMENT),
    edge: share(({ edge }) => edge) >= ENOUGH_AGREEMENT,
    agreed,
    verdict: !agreed.enough ? 'pullUnsure' : holds ? 'pullAgrees' : 'pullDisagrees',
  } as const;
};

/** Stations lie farther apart than this, mm. */
const ROUNDING_MM = 0.1;
const within = (sMm: number, { fromMm, toMm }: PullPlace): boolean =>
  sMm >= fromMm - ROUNDING_MM && sMm <= toMm + ROUNDING_MM;

const atEnd = (inside: readonly { readonly sMm: number }[], peakMm: number): boolean =>
  [inside[0], inside.at(-1)].some((end) => end !== undefined && Math.abs(end.sMm - peakMm) <= ROUNDING_MM);

/** Parts that a stretch covers by more than one station, and the one that its peak lies in. */
export const partsUnder = (stations: readonly (RegionId | null)[], peak: RegionId | null): readonly RegionId[] =>
  [...new Set([...stations, peak])].filter(
    (part) => part !== null && (part === peak || stations.filter((each) => each === part).length > 1),
  ) as readonly RegionId[];

interface AgainstBreaks extends BoneRun {
  readonly injury: InjuryId;
}
/** Of a class of several bones, the part of this one stands for what was published of the others. */
const occursIn = ({ content }: Context, { injury: id, bone }: AgainstBreaks): RegionId => {
  const injury = content.injuries.find((i) => i.id === id);
  if (injury === undefined) throw new RangeError(`no injury ${id}`);
  const { region } = injury.occursAt;
  if (content.regions.some((r) => r.id === region && r.bone === bone)) return region;
  return homeOn(content, injury, bone) ?? region;
};

/** Stations of beam theory, and those of them that lie where such breaks are found. */
const stationsThere = (context: Context, run: AgainstBreaks) => {
  const occursRegion = occursIn(context, run);
  const inside = tableOf(context, run).stations.filter((s) => !s.outsideBeamTheory);
  return { occursRegion, inside, there: inside.filter((s) => regionAt(context, run, s.sMm) === occursRegion) };
};

/** What can be said before the draws: that theory has no place there, which no draw changes. */
export const pullPending = compute('how.pullPending', (context, inputs: AgainstBreaks) => {
  const { occursRegion, there } = stationsThere(context, inputs);
  const at = { occursRegion, injury: inputs.injury };
  return there.length === 0 ? message('pullSilent', { ...at, beyond: null }) : message('pullPending', at);
});

/**
 * Where the plateau of pull lies in each draw, against where breaks of this class are found. What the told values say counts only where
 * enough draws say the same.
 */
export const pullAgainstBreaks = compute('how.pullAgainstBreaks', (context, inputs: AgainstBreaks) => {
  const { occursRegion, inside, there } = stationsThere(context, inputs);
  const bands = bandsOf(context, inputs);
  const { places, draws, peakAtMm, plateauMm } = bands;
  const toldPlace = { peakMm: peakAtMm.told, fromMm: plateauMm[0].told, toMm: plateauMm[1].told };
  const regions = inside.map(({ sMm }) => ({ sMm, region: regionAt(context, inputs, sMm) }));
  const of = (place: PullPlace): PlaceSaid => ({
    parts: partsUnder(
      regions.filter(({ sMm }) => within(sMm, place)).map(({ region }) => region),
      regionAt(context, inputs, place.peakMm),
    ),
    carries: there.some((s) => within(s.sMm, place)),
    edge: atEnd(inside, place.peakMm),
  });
  const { parts, perhaps, edge, verdict, agreed } = judged(of(toldPlace), places.map(of), draws);
  const inOrder = (some: readonly RegionId[]): readonly RegionId[] =>
    zonesOn(context.footFor(inputs.foot), inputs.bone)
      .map(({ region }) => region)
      .filter((region) => some.includes(region));
  const pulled = {
    plateau: plateauInBands(bands),
    parts: inOrder(parts),
    perhaps: inOrder(perhaps),
    spoken: spokenStretch(beamStretches(context, inputs)),
  };
  const at = { occursRegion, injury: inputs.injury };
  if (there.length === 0) return message('pullSilent', { ...at, beyond: pulled });
  return message(verdict, { ...at, ...pulled, edge, agreed });
});
