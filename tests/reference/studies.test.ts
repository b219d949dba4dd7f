/** Study rows against the abstracts they come from: counts, percentages and times as printed, and what we make of them. */
import { readContent } from '../../src/cli/read-content';
import { studyOf } from '../../src/content';
import { type Endpoint, type InjuryId, idOf, type Level, type OptionId } from '../../src/ids';
import { armsFor, rangeOf } from '../../src/recovery';
import { against } from '../tools/against';

const content = readContent();
const NOTHING = 0;
const PRINT = 'the printed percentage is rounded to whole or tenths of a percent';

interface Printed {
  readonly id: string;
  readonly source: string;
  /** As printed: percentage of the counted event, time in the printed unit, its spread. */
  readonly percent?: number;
  readonly percentTolerance?: number;
  readonly days?: number;
  readonly weeks?: number;
  readonly sdWeeks?: number;
  readonly range?: string;
}
const TORG = 'Torg et al. 1984, J Bone Joint Surg Am 66:209';
const MOLOGNE = 'Mologne et al. 2005, Am J Sports Med 33:970';
const KADIYALA = 'Kadiyala et al. 2024, J Orthop Trauma';
const EKSTRAND = 'Ekstrand & van Dijk 2013, Br J Sports Med 47:754';
const OMALLEY = "O'Malley et al. 1996, Am J Sports Med 24(2)";
const HOLLANDER = 'Hollander et al. 2021, Knee Surg Sports Traumatol Arthrosc';
const PRINTED: readonly Printed[] = [
  { id: 'torg-1984-nwb', source: TORG, weeks: 7 },
  { id: 'mologne-2005-cast-sport', source: MOLOGNE, percent: 44, percentTolerance: 0.5, weeks: 15.0 },
  { id: 'mologne-2005-screw-sport', source: MOLOGNE, weeks: 8.0 },
  { id: 'mologne-2005-cast-union', source: MOLOGNE, weeks: 14.5 },
  { id: 'mologne-2005-screw-union', source: MOLOGNE, weeks: 7.5 },
  { id: 'kadiyala-2024-no-surgery', source: KADIYALA, weeks: 9.9, sdWeeks: 8.3 },
  { id: 'kadiyala-2024-surgery', source: KADIYALA, weeks: 15.4, sdWeeks: 15.0 },
  {
    id: 'marecek-2016',
    source: 'Marecek et al. 2016, J Foot Ankle Surg',
    weeks: 8.0,
    sdWeeks: 2.6,
  },
  {
    id: 'egol-2007-shoe',
    source: 'Egol et al., prospective outcome study of avulsion fractures',
    days: 22,
  },
  { id: 'functional-2017-sport', source: 'BMC Musculoskelet Disord 2017, s12891-017-1893-6', days: 53 },
  { id: 'functional-2017-work', source: 'BMC Musculoskelet Disord 2017, s12891-017-1893-6', days: 17 },
  { id: 'shahid-2013-boot', source: 'Shahid et al. 2013, Foot Ankle Int 34:75', weeks: 9 },
  { id: 'shahid-2013-boot-work', source: 'Shahid et al. 2013, Foot Ankle Int 34:75', days: 31.5 },
  { id: 'shahid-2013-cast-work', source: 'Shahid et al. 2013, Foot Ankle Int 34:75', days: 39.2 },
  { id: 'porter-2005', source: 'Porter et al. 2005, Am J Sports Med 33:726', weeks: 7.5 },
  { id: 'watson-2020', source: 'Watson et al. 2020, Orthop J Sports Med', weeks: 3.6, range: '1.5-6' },
  { id: 'ekstrand-2013-surgery', source: EKSTRAND, percent: 25, percentTolerance: 0.5, days: 80 },
  { id: 'ekstrand-2013-no-surgery', source: EKSTRAND, days: 74 },
  { id: 'boa-2012', source: 'abstract of 2012, Orthop Proc 95-B Supp 1', weeks: 14.6, range: '5-34' },
  { id: 'mexico-2022', source: 'J Foot Ankle 2022;16', weeks: 12.04, sdWeeks: 2.21 },
  { id: 'hollander-2021-surgery', source: HOLLANDER, weeks: 13.1 },
  { id: 'hollander-2021-no-surgery', source: HOLLANDER, weeks: 20.9 },
  { id: 'omalley-1996-walk', source: OMALLEY, weeks: 6.1, range: '0-16' },
  { id: 'omalley-1996-barre', source: OMALLEY, weeks: 11.6, range: '4-48' },
  { id: 'omalley-1996-performance', source: OMALLEY, weeks: 19, range: '6-52' },
  { id: 'aynardi-2013', source: 'Aynardi et al. 2013, Foot Ankle Int 34:1619', percent: 2.1, percentTolerance: 0.05 },
];

const DAYS_A_WEEK = 7;
for (const p of PRINTED) {
  const study = studyOf(content, p.id);
  const from = { source: p.source, where: 'abstract', how: 'abstract' } as const;
  const { time, event } = study;
  if (p.percent !== undefined) {
    const share = ((event?.count ?? Number.NaN) / (event?.of ?? Number.NaN)) * 100;
    const tolerance = p.percentTolerance ?? NOTHING;
    against(from, `${p.id}: counts give the printed percentage`, () => ({
      expected: p.percent ?? NOTHING,
      got: share,
      tolerance,
      why: PRINT,
    }));
  }
  if (p.weeks !== undefined) {
    const expected = p.weeks;
    against(from, `${p.id}: weeks`, () => ({
      expected,
      got: time?.centreWeeks ?? Number.NaN,
      tolerance: 0,
      why: 'copied',
    }));
  }
  if (p.days !== undefined) {
    const expected = p.days;
    const got = (time?.centreWeeks ?? Number.NaN) * DAYS_A_WEEK;
    against(from, `${p.id}: days`, () => ({
      expected,
      got,
      tolerance: 0.04,
      why: 'weeks are kept to a hundredth: 0.005 x 7 days',
    }));
  }
  if (p.sdWeeks !== undefined) {
    const expected = p.sdWeeks;
    against(from, `${p.id}: standard deviation, weeks`, () => ({
      expected,
      got: time?.sdWeeks ?? Number.NaN,
      tolerance: 0,
      why: 'copied',
    }));
  }
  if (p.range !== undefined) {
    const expected = p.range;
    against(from, `${p.id}: range, weeks`, () => ({ expected, got: time?.rangeWeeks?.join('-') ?? 'none' }));
  }
}

const rangeText = (injury: string, option: string, endpoint: Endpoint, level: Level): string => {
  const filter = { injury: idOf<InjuryId>(injury), option: idOf<OptionId>(option), endpoint, level };
  const range = rangeOf(armsFor(content.studies, filter));
  return range ? `${range.lowWeeks}-${range.highWeeks}` : 'none';
};
against(
  {
    source: `${MOLOGNE} (8.0) and Porter et al. 2005, Am J Sports Med 33:726 (7.5)`,
    where: 'abstracts',
    how: 'abstract',
  },
  'zone 2, screw, recreational: range to sport spans what the two print, weeks',
  () => ({ expected: '7.5-8', got: rangeText('mt5-metaphyseal', 'screw', 'sport', 'recreational') }),
);
against(
  { source: `${HOLLANDER} (20.9)`, where: 'abstract', how: 'abstract' },
  'zone 3, no surgery, recreational: the one pooled time to union is of no named treatment, weeks',
  () => ({
    expected: '20.9-20.9, cast none',
    got: `${rangeText('mt5-proximal-shaft', 'no-surgery', 'union', 'recreational')}, cast ${rangeText('mt5-proximal-shaft', 'cast-nwb', 'union', 'recreational')}`,
  }),
);
against(
  {
    source:
      'J Hum Kinet 2021 (9.2, screw); Watson 2020 is of college athletes, Ekstrand 2013 and BOA 2012 name no kind of operation',
    where: 'abstracts',
    how: 'abstract',
  },
  'zone 2, screw, professional: only the one named screw of professionals makes the range to match play, weeks',
  () => ({ expected: '9.2-9.2', got: rangeText('mt5-metaphyseal', 'screw', 'match play', 'professional') }),
);

/** Shares that the abstracts print without counts. */
const ROBERTSON = 'Robertson et al. 2019, Foot Ankle Surg 25:654';
const TER_LAAK_BOLK = 'ter Laak Bolk et al. 2021, J ISAKOS 6:212';
const TORG_2010 = 'Torg et al. 2010, Am J Sports Med, PMID 20197494';
for (const [id, source, share] of [
  ['robertson-2019-stage-1', ROBERTSON, 'returned 100'],
  ['robertson-2019-stage-2', ROBERTSON, 'returned 100'],
  ['robertson-2019-skin', ROBERTSON, 'returned 98'],
  ['robertson-2019-open', ROBERTSON, 'returned 78'],
  ['robertson-2019-fusion', ROBERTSON, 'returned 85'],
  ['ter-laak-bolk-2021-conservative', TER_LAAK_BOLK, 'returned 93 (81-98)'],
  ['ter-laak-bolk-2021-fixation', TER_LAAK_BOLK, 'returned 94 (91-97)'],
  ['ter-laak-bolk-2021-fusion', TER_LAAK_BOLK, 'returned 94 (85-98)'],
  // Printed as success 96 and 82.
  ['torg-2010-nwb', TORG_2010, `failure ${100 - 96}`],
  ['torg-2010-surgery', TORG_2010, `failure ${100 - 82}`],
] as const)
  against({ source, where: 'abstract', how: 'abstract' }, `${id}: share as printed, percent`, () => {
    const event = studyOf(content, id).event;
    const band = event?.lowHighPercent == null ? '' : ` (${event.lowHighPercent.join('-')})`;
    return { expected: share, got: `${event?.what} ${event?.percent}${band}` };
  });

against(
  {
    source: 'Swords & Simon 2018 (16.5 weeks), Motizuki et al. 2018 (8.38 months)',
    where: 'abstracts',
    how: 'abstract',
  },
  'operated heel: the range to work spans two studies that disagree, weeks',
  () => ({ expected: '16.5-36.44', got: rangeText('calcaneus-intra-articular', 'heel-fixation', 'work', 'everyday') }),
);
