/**
 * Where the frame pulls hardest, against where breaks of a class are found: told from the ensemble, draw by draw. What the told values
 * say counts only where four fifths of the draws say the same.
 */
import { homeOn } from '../content/look-up';
import type { InjuryId, RegionId } from '../ids';
import { ENOUGH_AGREEMENT, type PullPlace } from '../mechanics';
import type { Quantity } from '../units';
import { compute, message } from './build';
import type { Context } from './context';
import { agreed, type BoneRun, bandsOf, regionAt, tableOf } from './how-computes';
import { tenth } from './place';

/** What one draw says. */
export interface PlaceSaid {
  /** The part of its largest pull; null where the bone has no parts. */
  readonly peakRegion: RegionId | null;
  /** Nine tenths of it reach where such breaks are found. */
  readonly carries: boolean;
  /** Its largest pull lies at the first or last place of the theory: beyond, it may grow on for all that is known. */
  readonly edge: boolean;
}

/** `draws` counts those without an answer too: they agree with nothing. */
export const judged = (told: PlaceSaid, said: readonly PlaceSaid[], draws: number) => {
  const share = (holds: (one: PlaceSaid) => boolean): number => said.filter(holds).length / draws;
  const enough = (holds: (one: PlaceSaid) => boolean): boolean => share(holds) >= ENOUGH_AGREEMENT;
  const same = share(({ carries }) => carries === told.carries);
  const onePeak = enough(({ peakRegion }) => peakRegion === told.peakRegion);
  return {
    onePeak,
    peakRegion: onePeak ? told.peakRegion : null,
    edge: enough(({ edge }) => edge),
    share: same,
    verdict: same < ENOUGH_AGREEMENT ? 'pullUnsure' : told.carries ? 'pullAgrees' : 'pullDisagrees',
  } as const;
};

/** Stations lie farther apart than this, mm. */
const ROUNDING_MM = 0.1;
const within = (sMm: number, { fromMm, toMm }: PullPlace): boolean =>
  sMm >= fromMm - ROUNDING_MM && sMm <= toMm + ROUNDING_MM;

const atEnd = (inside: readonly { readonly sMm: number }[], peakMm: number): boolean =>
  [inside[0], inside.at(-1)].some((end) => end !== undefined && Math.abs(end.sMm - peakMm) <= ROUNDING_MM);

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
  const { places, draws, peakAtMm, plateauMm } = bandsOf(context, inputs);
  const toldPlace = { peakMm: peakAtMm.told, fromMm: plateauMm[0].told, toMm: plateauMm[1].told };
  const of = (place: PullPlace): PlaceSaid => ({
    peakRegion: regionAt(context, inputs, place.peakMm),
    carries: there.some((s) => within(s.sMm, place)),
    edge: atEnd(inside, place.peakMm),
  });
  const { onePeak, peakRegion, edge, verdict, share } = judged(of(toldPlace), places.map(of), draws);
  const plateau: Quantity = {
    value: tenth(toldPlace.peakMm),
    unit: 'mm',
    lowHigh: [tenth(toldPlace.fromMm), tenth(toldPlace.toMm)],
  };
  const [first, last] = [inside[0]?.sMm ?? 0, inside.at(-1)?.sMm ?? 0];
  const spoken: Quantity = { value: tenth(first), unit: 'mm', lowHigh: [tenth(first), tenth(last)] };
  const pulled = { plateau, peakRegion, onePeak, spoken };
  const at = { occursRegion, injury: inputs.injury };
  if (there.length === 0) return message('pullSilent', { ...at, beyond: pulled });
  return message(verdict, { ...at, ...pulled, edge, agreed: agreed(share) });
});
