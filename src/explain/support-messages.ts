/** What supports and a screw do to the load: the messages of question 4 that the frame of the foot makes. */
import type { ActivityId, BoneId } from '../ids';
import type { SupportId } from '../mechanics';
import type { Quantity } from '../units';
import type { Agreed } from './load-messages';

export interface SupportMessages {
  /** What a boot, a sole or a wedge does to the largest pull in the bone, against the reference task barefoot. */
  support: {
    readonly support: SupportId;
    readonly bone: BoneId;
    /** False where the frame has no part for it: a sole bends at the first toe alone. */
    readonly speaks: boolean;
    readonly reference: ActivityId;
    readonly ratio: Quantity;
    readonly ranking: boolean;
    readonly raises: boolean;
    readonly agreed: Agreed;
  };
  supportPublished: { readonly support: SupportId; readonly index: number };
  /** What is computed in place of a boot. */
  supportStandIn: { readonly flat: ActivityId; readonly reference: ActivityId };
  supportPending: Record<string, never>;
  /** A screw in the bone at the break: parts of the bending, the bone's pull with it over without, its stress over its yield. */
  screwShare: {
    readonly core: Quantity;
    readonly reference: ActivityId;
    readonly outside: boolean;
    readonly screws: readonly {
      readonly material: string;
      readonly upDown: Quantity;
      readonly sideways: Quantity;
      /** Null, as each size that hangs on the load: it may have none. Then only what is more and what is less. */
      readonly bone: Quantity | null;
      readonly ofYield: Quantity | null;
      readonly less: boolean;
      readonly agreed: Agreed;
    }[];
  };
  /** A screw alone across a gap, against the rule of thumb on movement over width. */
  screwBridge: {
    readonly core: Quantity;
    readonly reference: ActivityId;
    readonly bone: Quantity;
    readonly cartilage: Quantity;
    readonly screws: readonly {
      readonly material: string;
      /** Null, both, where the load may have no size. */
      readonly ofYield: Quantity | null;
      readonly opening: Quantity | null;
      /** Nearer to its limit than in whole bone. */
      readonly more: boolean;
      readonly agreed: Agreed;
      /** For each N m. */
      readonly openingPerNm: Quantity;
      /** For each N m and each mm of gap. */
      readonly turnPerNmMm: Quantity;
    }[];
  };
  /** How far a straight screw comes from the bone's tip, by diameter, beside what is advised. */
  screwLength: {
    readonly bone: Quantity;
    readonly advised: Quantity;
    readonly advisedShare: Quantity;
    readonly advisedOfThis: Quantity;
    readonly rods: readonly { readonly diameter: Quantity; readonly reach: Quantity; readonly whole: boolean }[];
  };
  screwNotModelled: { readonly bone: BoneId };
}
