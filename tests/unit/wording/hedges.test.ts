/** Every subject x status x reader: the sentence carries its hedge, and what is only reported never reads as confirmed. */
import { describe, expect, it } from 'vitest';
import { STATUSES, SUBJECTS, type Subject } from '../../../src/cases';
import type { ClaimValue, Finding, Message } from '../../../src/explain';
import {
  type ActivityId,
  type ClaimId,
  type FactorId,
  type FindingId,
  type InjuryId,
  idOf,
  type MechanismId,
  type OptionId,
  READERS,
  type RegionId,
} from '../../../src/ids';
import type { IsoDate } from '../../../src/units';
import { plainText, type Sentence, wordFinding, wordValue } from '../../../src/wording';
import { caseOf, content, explained } from '../../tools/explained';

const day = '2026-09-14' as IsoDate;
const place = { by: 'region', region: idOf<RegionId>('mt5-zone-2') } as const;

/** One value a subject: a missing one does not compile. */
const VALUES: { readonly [S in Subject]: Extract<ClaimValue, { subject: S }>['value'] } = {
  side: 'left',
  bone: 'metatarsal5',
  place,
  injury: idOf<InjuryId>('mt5-metaphyseal'),
  direction: 'transverse',
  displacement: { displaced: true, mm: 2 },
  measure: { what: 'gap', value: 3 },
  onset: 'gradual',
  mechanism: idOf<MechanismId>('repeated-load'),
  injuryDate: day,
  treatment: { option: idOf<OptionId>('screw'), on: day },
  followUp: { finding: 'united', on: day },
  timetable: { weeks: 6, endpoint: 'match play' },
  outcome: { endpoint: 'training', result: 'reached', on: day },
  ageBand: '18-34',
  massKg: 70,
  heightCm: 170,
  footShape: 'high',
  activity: idOf<ActivityId>('running'),
  level: 'competitive',
  riskFactor: idOf<FactorId>('smoking'),
};

/** What a listener must hear, whatever else the sentence says. */
const MARKS_OF = {
  confirmed: /^(?!.*(not confirmed|nobody has confirmed|reported|inferred|ruled out|if ))/i,
  reported: /reported.*not confirmed/i,
  inferred: /nobody has confirmed|inferred/i,
  ruledOut: /ruled out/i,
} as const;

const explanation = explained(caseOf(['bone', 'metatarsal5'], ['place', place]));

const findingOf = (message: Message, whatIf = false): Finding => ({
  id: idOf<FindingId>('where.test'),
  message,
  depth: 'claim',
  shows: [],
  confidence: { level: 'reported', reason: { by: 'nothing' } },
  basis: { sources: [], claims: [], compute: 'case.claim', inputs: {} },
  whatIf,
});

const claims = [idOf<ClaimId>('c1')];
const valueFor = (subject: Subject): ClaimValue => ({ subject, value: VALUES[subject] }) as ClaimValue;

const told = (subject: Subject, status: (typeof STATUSES)[number], reader: (typeof READERS)[number]): Sentence =>
  wordFinding(
    content,
    explanation,
    findingOf({ id: 'claimStated', args: { claim: { status, claims }, of: valueFor(subject) } }),
    reader,
  );

describe.each(READERS)('for %s', (reader) => {
  describe.each(SUBJECTS)('%s', (subject) => {
    it.each(STATUSES)('%s carries its hedge and its stamp', (status) => {
      const sentence = told(subject, status, reader);
      const text = plainText(sentence);
      expect(text).toMatch(MARKS_OF[status]);
      expect(sentence.stamp).toBe(status);
      expect(text).toMatch(/^[A-Z].*[.!?]$/);
      expect(text).not.toMatch(/[{}]|undefined|null|NaN/);
    });

    it('reads differently for every status', () => {
      const texts = STATUSES.map((status) => plainText(told(subject, status, reader)));
      expect(new Set(texts).size).toBe(STATUSES.length);
    });

    it('the hedge is the only difference: the clause is the same, so no template can leave it out', () => {
      const clause = wordValue(content, valueFor(subject), reader, null);
      for (const status of STATUSES)
        expect(plainText(told(subject, status, reader)).toLowerCase()).toContain(clause.toLowerCase());
    });

    it('not stated says so', () => {
      const text = plainText(
        wordFinding(content, explanation, findingOf({ id: 'notStated', args: { subject } }), reader),
      );
      expect(text).toMatch(/not (been )?stated|not known|nobody|no one/i);
    });

    it('reports that disagree say so, with the status of each', () => {
      const sentence = wordFinding(
        content,
        explanation,
        findingOf({
          id: 'contradiction',
          args: {
            subject,
            values: [
              { claim: { status: 'reported', claims }, of: valueFor(subject) },
              { claim: { status: 'ruledOut', claims }, of: valueFor(subject) },
            ],
          },
        }),
        reader,
      );
      expect(sentence.stamp).toBe('contradiction');
      expect(plainText(sentence)).toMatch(/disagree|contradiction/i);
      expect(plainText(sentence)).toMatch(/reported.*ruled out/i);
    });
  });

  it.each(STATUSES)('the headline of where, %s', (status) => {
    for (const message of [
      {
        id: 'brokenHere',
        args: { claim: { status, claims }, bone: 'metatarsal5', region: idOf<RegionId>('mt5-zone-2') },
      },
      { id: 'boneHurt', args: { claim: { status, claims }, bone: 'metatarsal5' } },
    ] satisfies Message[]) {
      const sentence = wordFinding(content, explanation, findingOf(message), reader);
      expect(plainText(sentence)).toMatch(MARKS_OF[status]);
      expect(sentence.stamp).toBe(status);
    }
  });

  it.each(['reported', 'inferred', 'contradiction'] as const)(
    'what follows from facts that are %s is conditional',
    (given) => {
      const message: Message = {
        id: 'breakDrawn',
        args: {
          given,
          bone: 'metatarsal5',
          region: idOf<RegionId>('mt5-zone-2'),
          fromTip: { value: 18, unit: 'mm' },
          precision: 'distance',
        },
      };
      const plain = plainText(wordFinding(content, explanation, findingOf(message), reader));
      const sure = { ...message, args: { ...message.args, given: 'confirmed' as const } };
      expect(plain).not.toBe(plainText(wordFinding(content, explanation, findingOf(sure), reader)));
      expect(plain).toMatch(/^(If|Given|Reports disagree)/);
    },
  );

  it('a what-if is called one', () => {
    const message: Message = {
      id: 'boneHurt',
      args: { claim: { status: 'inferred', claims: [] }, bone: 'metatarsal5' },
    };
    const sentence = wordFinding(content, explanation, findingOf(message, true), reader);
    expect(sentence.whatIf).toBe(true);
    expect(plainText(sentence)).toMatch(/^What if/);
  });
});
