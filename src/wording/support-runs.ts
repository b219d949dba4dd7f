/** Sentences about supports, screws and repeated load. */
import type { Message, MessageOf } from '../explain/messages';
import type { Quantity } from '../units';
import { changeOf } from './change';
import { SAYS_WORDS } from './en/lists';
import { CONSTANTS_KNOWN, SUPPORT_PARTS } from './en/support-messages';
import { fillRuns, joined, listRuns, type Value } from './fill';
import { loadFactorName } from './load-runs';
import { namesFor } from './names';
import { withOddRun } from './odd-run';
import { list, type Pen, quantity, sentence } from './pen';
import { formatNumber, formatQuantity } from './quantities';
import { sourceName } from './sources';
import type { Run } from './types';

const SUPPORT_MESSAGES = [
  'support',
  'supportPublished',
  'supportStandIn',
  'supportPending',
  'screwShare',
  'screwBridge',
  'screwLength',
  'screwNotModelled',
  'repeatedLoad',
] as const;
export type SupportMessage = MessageOf<(typeof SUPPORT_MESSAGES)[number]>;

const IDS: ReadonlySet<string> = new Set(SUPPORT_MESSAGES);
export const isSupportMessage = (message: Message): message is SupportMessage => IDS.has(message.id);

type Rod = MessageOf<'screwLength'>['args']['rods'][number];

const materialName = (pen: Pen, id: string): string => {
  const found = pen.content.fixations.flatMap((f) => f.materials).find((m) => m.id === id);
  return (pen.reader === 'study' ? found?.term : found?.plain) ?? id;
};

const ends = ({ value, lowHigh }: Quantity): readonly [number, number] => lowHigh ?? [value, value];

/** 5 to 11 %. */
const percents = (pen: Pen, share: Quantity): Value => {
  const [low, high] = ends(share);
  const round = (value: number): string => String(Math.round(100 * value));
  return joined(
    fillRuns(SUPPORT_PARTS.range, { low: round(low), high: round(high) }).map((run) => pen.number(run.text)),
  );
};
const times = (pen: Pen, ratio: Quantity): Value => {
  const [low, high] = ends(ratio);
  return joined(
    fillRuns(SUPPORT_PARTS.times, { low: formatNumber(low), high: formatNumber(high) }).map((run) =>
      pen.number(run.text),
    ),
  );
};

/** 5 to 11 % (titanium) or 9 to 17 % (steel). */
const byMaterial = (pen: Pen, of: readonly (readonly [material: string, share: Quantity])[]): readonly Run[] =>
  listRuns(
    of.map(([id, share]) =>
      fillRuns(SUPPORT_PARTS.ofMaterial, { range: percents(pen, share), material: materialName(pen, id) }),
    ),
    SUPPORT_PARTS.or,
    '',
  );

/** One clause a material, parted by semicolons' bigger sister. */
const clauses = (all: readonly (readonly Run[])[]): readonly Run[] =>
  joined(all.flatMap((runs, i) => (i === 0 ? runs : [{ text: '. ' }, ...runs])));

/** Two figures: a small number of degrees would be none with one decimal. */
const fine = (pen: Pen, { value }: Quantity, unit: string): Run => pen.number(`${Number(value.toPrecision(2))}${unit}`);

const rodRuns = (pen: Pen, { diameter, reach, whole }: Rod): readonly Run[] => {
  const [low, high] = ends(reach);
  const mm = (value: number): Run => pen.number(formatQuantity({ value, unit: 'mm' }));
  const values = { diameter: formatQuantity(diameter), reach: mm(reach.value), low: mm(low), high: mm(high) };
  if (whole) return fillRuns(SUPPORT_PARTS.rodWhole, values);
  return fillRuns(pen.reader === 'study' ? SUPPORT_PARTS.rodBand : SUPPORT_PARTS.rod, values);
};

const inBone = (pen: Pen, s: MessageOf<'screwShare'>['args']['screws'][number]): readonly Run[] => {
  const { bone, ofYield, less, agreed } = s;
  const values = {
    material: materialName(pen, s.material),
    upDown: percents(pen, s.upDown),
    sideways: percents(pen, s.sideways),
    share: quantity(pen, agreed.share),
  };
  if (bone !== null && ofYield !== null)
    return fillRuns(SUPPORT_PARTS.screwInBone, {
      ...values,
      bone: times(pen, bone),
      ofYield: percents(pen, ofYield),
    });
  return fillRuns(SUPPORT_PARTS[agreed.enough ? (less ? 'screwLess' : 'screwNotLess') : 'screwUnsure'], values);
};

const alone = (pen: Pen, s: MessageOf<'screwBridge'>['args']['screws'][number]): readonly Run[] => {
  const { ofYield, opening, more, agreed } = s;
  const values = {
    material: materialName(pen, s.material),
    perNm: fine(pen, { ...s.openingPerNm, value: 100 * s.openingPerNm.value }, ' %'),
    turn: fine(pen, s.turnPerNmMm, '°'),
    share: quantity(pen, agreed.share),
  };
  if (ofYield !== null && opening !== null)
    return fillRuns(SUPPORT_PARTS.screwAlone, {
      ...values,
      ofYield: percents(pen, ofYield),
      opening: quantity(pen, opening),
    });
  return fillRuns(SUPPORT_PARTS[agreed.enough ? (more ? 'aloneMore' : 'aloneNotMore') : 'aloneUnsure'], values);
};

export const supportRuns = (pen: Pen, message: SupportMessage): readonly Run[] => {
  const names = namesFor(pen.content, pen.reader);
  switch (message.id) {
    case 'support': {
      const { support, speaks, reference, ratio, ranking, raises, agreed } = message.args;
      const { key, values } = changeOf(pen, ratio, raises, agreed);
      const { name, step } = loadFactorName(pen, support);
      const told = key === 'hardly' || !ranking ? key : (`${key}Rank` as const);
      const all = {
        support: name,
        step,
        reference: names.activity(reference),
        ...values,
      };
      return speaks ? withOddRun(pen, agreed, `support.${told}`, all) : sentence(pen, 'support.oneJoint', all);
    }
    case 'supportPublished': {
      const { support, index } = message.args;
      const published = pen.content.loadFactors.find((f) => f.id === support)?.published[index];
      return sentence(pen, 'contributorPublished', {
        contributor: loadFactorName(pen, support).name,
        says: published === undefined ? '' : SAYS_WORDS[published.says],
        text: published?.text ?? '',
      });
    }
    case 'supportStandIn':
      return sentence(pen, 'supportStandIn', {
        flat: names.activity(message.args.flat),
        reference: names.activity(message.args.reference),
      });
    case 'screwShare': {
      const { core, reference, outside, screws } = message.args;
      return sentence(pen, `screwShare.${outside ? 'outside' : 'inside'}`, {
        core: formatQuantity(core),
        reference: names.activity(reference),
        shares: byMaterial(
          pen,
          screws.map((s) => [s.material, s.upDown]),
        ),
        screws: clauses(screws.map((s) => inBone(pen, s))),
      });
    }
    case 'screwBridge': {
      const { core, reference, bone, cartilage, screws } = message.args;
      const sized = screws.flatMap(({ material, ofYield }) => (ofYield === null ? [] : [[material, ofYield] as const]));
      const ordered = screws.every(({ more, agreed }) => more && agreed.enough);
      return sentence(pen, `screwBridge.${sized.length > 0 ? 'sized' : ordered ? 'rank' : 'cannotTell'}`, {
        core: formatQuantity(core),
        reference: names.activity(reference),
        bone: quantity(pen, bone),
        cartilage: quantity(pen, cartilage),
        limits: byMaterial(pen, sized),
        screws: clauses(screws.map((s) => alone(pen, s))),
      });
    }
    case 'screwLength': {
      const { bone, advised, advisedShare, advisedOfThis, rods } = message.args;
      const fixation = pen.content.fixations.find((f) => f.bone === pen.explanation.bone);
      const source = (evidence: { readonly source: Parameters<typeof sourceName>[1] | null } | undefined): string =>
        evidence?.source == null ? '' : sourceName(pen.content, evidence.source);
      return sentence(pen, 'screwLength', {
        bone: formatQuantity(bone),
        rods: list(rods.map((rod) => rodRuns(pen, rod))),
        advised: quantity(pen, advised),
        advisedShare: quantity(pen, advisedShare),
        advisedOfThis: quantity(pen, advisedOfThis),
        lengthSource: source(fixation?.advisedLength.evidence),
        shareSource: source(fixation?.advisedShare.evidence),
      });
    }
    case 'repeatedLoad': {
      const { more, exponent, damage, mark } = message.args;
      return sentence(pen, 'repeatedLoad', {
        more: quantity(pen, more),
        exponent: quantity(pen, exponent),
        damage: times(pen, damage),
        known: CONSTANTS_KNOWN[mark],
      });
    }
    case 'supportPending':
    case 'screwNotModelled':
      return sentence(pen, message.id);
  }
};
