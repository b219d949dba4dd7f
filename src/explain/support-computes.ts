/** What question 4 computes: what a boot, a sole, a wedge and a screw do to the load on the bone, as ratios and shares. */
import type { Fixation } from '../content/schema';
import type { BoneId } from '../ids';
import type { SupportId } from '../mechanics';
import type { ScrewFigures } from '../mechanics/fixation';
import { degrees, type Quantity } from '../units';
import { statedBy } from './agreed';
import { compute, message } from './build';
import { axisOn, type Context } from './context';
import { hundredths, sizeMayBeTold, spread, tooManyBeyond, two } from './how-computes';
import { REFERENCE_ACTIVITY } from './loads';
import type { MessageOf } from './messages';
import type { OnFoot } from './place';
import {
  FLAT_ACTIVITY,
  fixationIn,
  rodsFor,
  type ScrewRun,
  type SupportRun,
  screwFor,
  supportsFor,
} from './support-loads';

export const supportPending = compute('options.supportPending', () => message('supportPending', {}));
export const supportStandIn = compute('options.supportStandIn', () =>
  message('supportStandIn', { flat: FLAT_ACTIVITY, reference: REFERENCE_ACTIVITY }),
);

/** The frame's one joint of a toe is the first. */
const FIRST_RAY: BoneId = 'metatarsal1';

export const support = compute('options.support', (context, inputs: SupportRun & { readonly support: SupportId }) => {
  const found = supportsFor(context, inputs).find((s) => s.id === inputs.support);
  if (found === undefined) throw new RangeError(`${inputs.support} finds no answer`);
  const raises = statedBy(found.raises);
  return message('support', {
    support: found.id,
    bone: inputs.bone,
    speaks: found.id !== 'stiffSole' || inputs.bone === FIRST_RAY,
    reference: REFERENCE_ACTIVITY,
    ratio: hundredths(found.ratio),
    ranking: !sizeMayBeTold(found) || raises.agreed.contrary === true,
    raises: raises.holds,
    agreed: raises.agreed,
  });
});
export const supportPublished = compute(
  'options.supportPublished',
  (_, inputs: { readonly support: SupportId; readonly index: number }) => message('supportPublished', inputs),
);

const fixationOf = (context: Context, bone: BoneId): Fixation => {
  const found = fixationIn(context, bone);
  if (found === null) throw new RangeError(`no screw for ${bone}`);
  return found;
};

/** Each material whose screw finds an answer. */
const screwsOf = (
  context: Context,
  run: ScrewRun,
): readonly { readonly material: string; readonly figures: ScrewFigures }[] =>
  fixationOf(context, run.bone).materials.flatMap(({ id }) => {
    const figures = screwFor(context, run, id);
    return figures === null ? [] : [{ material: id, figures }];
  });
/** A share of yield, an opening: sizes of a push-off, which must be one that may have them. */
const loadHasSize = (figures: ScrewFigures): boolean => !figures.ranks && !tooManyBeyond(figures);
export const screwAnswers = (context: Context, run: ScrewRun): boolean => screwsOf(context, run).length > 0;

const core = (fixation: Fixation): Quantity => ({ value: fixation.core.value, unit: 'mm' });

export const screwShare = compute('options.screwShare', (context, inputs: ScrewRun) => {
  const screws = screwsOf(context, inputs);
  return message('screwShare', {
    core: core(fixationOf(context, inputs.bone)),
    reference: REFERENCE_ACTIVITY,
    outside: screws.some(({ figures }) => figures.outsideBeamTheory),
    screws: screws.map(({ material, figures }): MessageOf<'screwShare'>['args']['screws'][number] => {
      const { holds, agreed } = statedBy(figures.boneLess);
      const sized = loadHasSize(figures);
      return {
        material,
        upDown: spread(figures.shareUpDown, 'share'),
        sideways: spread(figures.shareSideways, 'share'),
        bone: sized ? hundredths(figures.boneRatio) : null,
        ofYield: sized ? spread(figures.ofYield, 'share') : null,
        less: holds,
        agreed,
      };
    }),
  });
});

export const screwBridge = compute('options.screwBridge', (context, inputs: ScrewRun) => {
  const fixation = fixationOf(context, inputs.bone);
  return message('screwBridge', {
    core: core(fixation),
    reference: REFERENCE_ACTIVITY,
    bone: { value: fixation.gapBone.value, unit: 'share' },
    cartilage: { value: fixation.gapCartilage.value, unit: 'share' },
    screws: screwsOf(context, inputs).map(
      ({ material, figures }): MessageOf<'screwBridge'>['args']['screws'][number] => {
        const { holds, agreed } = statedBy(figures.aloneMore);
        const sized = loadHasSize(figures);
        return {
          material,
          ofYield: sized ? spread(figures.aloneOfYield, 'share') : null,
          opening: sized ? spread(figures.opening, 'share') : null,
          more: holds,
          agreed,
          openingPerNm: { value: two(figures.openingPerNm), unit: 'share' },
          turnPerNmMm: { value: two(degrees(figures.turnPerNmMm)), unit: 'deg' },
        };
      },
    ),
  });
});

/** A rod that comes this near the head passes the whole canal, as a share of the bone's length. */
const WHOLE_CANAL = 0.85;

export const screwLength = compute('options.screwLength', (context, inputs: OnFoot & { readonly bone: BoneId }) => {
  const fixation = fixationOf(context, inputs.bone);
  const { lengthMm } = axisOn(context.footFor(inputs.foot), inputs.bone);
  const mm = (value: number): number => Math.round(value);
  return message('screwLength', {
    bone: { value: mm(lengthMm), unit: 'mm' },
    advised: { value: fixation.advisedLength.value, unit: 'mm' },
    advisedShare: { value: fixation.advisedShare.value, unit: 'share' },
    advisedOfThis: { value: mm(fixation.advisedShare.value * lengthMm), unit: 'mm' },
    rods: rodsFor(context, inputs).flatMap(
      ({ diameterMm, toldMm, lowMm, highMm }): MessageOf<'screwLength'>['args']['rods'] =>
        toldMm === null
          ? []
          : [
              {
                diameter: { value: diameterMm, unit: 'mm' },
                reach: { value: mm(toldMm), unit: 'mm', lowHigh: [mm(lowMm ?? 0), mm(highMm ?? toldMm)] },
                whole: toldMm > WHOLE_CANAL * lengthMm,
              },
            ],
    ),
  });
});

export const screwNotModelled = compute('options.screwNotModelled', (_, inputs: { readonly bone: BoneId }) =>
  message('screwNotModelled', inputs),
);
