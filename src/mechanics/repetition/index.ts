/** Repeated loading, compared: how a training diary changes damage against the habit before it. Ratios only, never a probability. */
export { damageRatio, offsettingStrain, stridesOf } from './damage';
export { type DamageLaw, type Diary, damageOf, type ToldWeek, type WeekDamage } from './diary';
export { damageRangeOf, type Ranged, type RepetitionInputsLike, type WeekRange } from './range';
export { type Repair, repairedBy } from './repair';
