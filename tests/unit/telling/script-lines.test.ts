import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../src/explain/types';
import { type FindingId, idOf, QUESTION_IDS } from '../../../src/ids';
import { RATE, SCRIPT_SECONDS } from '../../../src/telling/script-fit';
import { type ScriptMaterial, timedLines } from '../../../src/telling/script-lines';
import { spokenWords } from '../../../src/telling/spoken';
import type { Worded } from '../../../src/telling/worded';
import type { Sentence } from '../../../src/wording/types';

interface Spec {
  readonly question: (typeof QUESTION_IDS)[number];
  readonly depth: Finding['depth'];
  readonly words: number;
  readonly unknown: boolean;
  readonly stamp: Sentence['stamp'];
}

const wordedOf = (spec: Spec, index: number): Worded => {
  const id = idOf<FindingId>(`${spec.question}.f${index}`);
  // Ten-letter words that differ between findings, so that no two texts are the same.
  const text = `${spec.stamp === 'reported' ? 'Reportedly' : 'So'} x${String.fromCharCode(97 + (index % 26))}${'y'.repeat(
    Math.floor(index / 26),
  )} ${Array.from({ length: spec.words }, () => 'word').join(' ')}.`;
  return {
    question: spec.question,
    text,
    sentence: {
      finding: id,
      runs: [
        { text, mark: 'weak' },
        { text: '', mark: 'seen' },
      ],
      stamp: spec.stamp,
      whatIf: false,
    },
    finding: {
      id,
      message: spec.unknown ? { id: 'howUnknown', args: {} } : { id: 'whyUnknown', args: {} },
      depth: spec.depth,
      shows: [],
      confidence: spec.unknown
        ? { level: 'unknown', reason: { by: 'claim', status: 'notStated' } }
        : { level: 'reported', reason: { by: 'claim', status: 'reported' } },
      basis: { sources: [], claims: [], compute: 'none', inputs: {} },
      whatIf: false,
    },
  };
};

const known = (w: Worded, unknown: boolean): Worded =>
  unknown ? w : { ...w, finding: { ...w.finding, message: { id: 'sideDefault', args: {} } } };

const specs = fc.array(
  fc.record({
    question: fc.constantFrom(...QUESTION_IDS),
    depth: fc.constantFrom('sentence', 'claim', 'more'),
    words: fc.integer({ min: 1, max: 60 }),
    unknown: fc.boolean(),
    stamp: fc.constantFrom(null, 'reported', 'confirmed', 'inferred', 'contradiction'),
  }) as fc.Arbitrary<Spec>,
  { maxLength: 60 },
);
const worded = specs.map((list) => list.map((spec, i) => known(wordedOf(spec, i), spec.unknown)));
const materials: fc.Arbitrary<ScriptMaterial> = worded.chain(materialOf);

function materialOf(list: readonly Worded[]): fc.Arbitrary<ScriptMaterial> {
  return fc.record({
    worded: fc.constant(list),
    ofAge: fc.constantFrom([], [{ text: 'of age these figures are of others', mark: 'weak' as const }]),
    ofOthers: fc.subarray(list.map(({ finding }) => finding.id)).map((ids) => new Set(ids)),
    openings: fc.array(
      fc.integer({ min: 1, max: 60 }).map((n) => Array.from({ length: n }, () => 'open').join(' ')),
      {
        maxLength: 2,
      },
    ),
    limits: fc.array(
      fc.integer({ min: 1, max: 60 }).map((n) => ({
        text: Array.from({ length: n }, () => 'limit').join(' '),
        mark: 'weak' as const,
      })),
      {
        maxLength: 3,
      },
    ),
    whatIf: fc.boolean(),
  });
}
const rates = fc.integer({ min: RATE.slowest, max: RATE.fastest });
const lengths = fc.constantFrom(...SCRIPT_SECONDS);

describe('timed lines', () => {
  it('never run over their length, start one after another, and add up', () => {
    fc.assert(
      fc.property(materials, lengths, rates, (material, seconds, rate) => {
        const { lines, totalSeconds } = timedLines(material, seconds, rate);
        expect(totalSeconds).toBeLessThanOrEqual(seconds);
        let at = 0;
        for (const line of lines) {
          expect(line.startSecond).toBeCloseTo(at, 6);
          expect(line.seconds).toBeGreaterThan(0);
          at += line.seconds;
        }
        expect(at).toBeCloseTo(totalSeconds, 6);
        const starts = lines.map((line) => line.startSecond);
        starts.slice(1).forEach((start, i) => {
          expect(start).toBeGreaterThan(starts[i] ?? Number.POSITIVE_INFINITY);
        });
      }),
    );
  });

  it('use the time: whatever is left out would not fit any more', () => {
    fc.assert(
      fc.property(materials, lengths, rates, (material, seconds, rate) => {
        const { lines } = timedLines(material, seconds, rate);
        const used = lines.reduce((sum, line) => sum + spokenWords(line.text).length, 0);
        const room = Math.floor((seconds * rate) / 60) - used;
        const spoken = new Set(lines.map((line) => line.text));
        const ofAge = material.ofAge.filter(({ text }) => !spoken.has(text));
        for (const { text, finding } of material.worded) {
          const before = material.ofOthers.has(finding.id) ? ofAge : [];
          const needs = [text, ...before.map((each) => each.text)].flatMap(spokenWords).length;
          if (!spoken.has(text)) expect(needs, text).toBeGreaterThan(room);
        }
      }),
    );
  });

  it('keep the hedge: each line is a whole sentence of the wording with its stamp, or one of the frame', () => {
    fc.assert(
      fc.property(materials, lengths, rates, (material, seconds, rate) => {
        for (const line of timedLines(material, seconds, rate).lines) {
          if (line.finding === null) continue;
          const source = material.worded.find((w) => w.finding.id === line.finding);
          expect(line.text).toBe(source?.text);
          expect(line.stamp).toBe(source?.sentence.stamp);
          expect(line.confidence).toBe(source?.finding.confidence.level);
          expect(line.mark).toBe('weak');
        }
      }),
    );
  });

  it('open with the disclaimer and carry at least one unknown, at every length and rate', () => {
    fc.assert(
      fc.property(materials, lengths, rates, (material, seconds, rate) => {
        const { lines, unknowns } = timedLines(material, seconds, rate);
        expect(lines[0]?.kind).toBe('opening');
        expect(lines.filter((line) => line.kind === 'opening')).toHaveLength(1);
        expect(lines.at(-1)?.kind).toBe('unknown');
        expect(unknowns.filter((u) => u.spoken).length).toBe(lines.filter((line) => line.kind === 'unknown').length);
        expect(lines.filter((line) => line.kind === 'whatIf')).toHaveLength(material.whatIf ? 1 : 0);
      }),
    );
  });

  it('only gain with length: every line of the shorter script is in the longer one', () => {
    fc.assert(
      fc.property(materials, rates, (material, rate) => {
        const texts = SCRIPT_SECONDS.map((seconds) =>
          timedLines(material, seconds, rate).lines.map((line) => line.text),
        );
        for (const text of texts[0] ?? []) expect(texts[1]).toContain(text);
        for (const text of texts[1] ?? []) expect(texts[2]).toContain(text);
      }),
    );
  });

  it('say nothing twice', () => {
    fc.assert(
      fc.property(materials, lengths, rates, (material, seconds, rate) => {
        const twice = { ...material, worded: [...material.worded, ...material.worded] };
        const texts = timedLines(twice, seconds, rate).lines.map((line) => line.text);
        const findings = texts.filter((text) => material.worded.some((w) => w.text === text));
        expect(new Set(findings).size).toBe(findings.length);
      }),
    );
  });

  it('put the five sentences before the claims and those before the rest', () => {
    const list: Spec[] = (['more', 'claim', 'sentence'] as const).flatMap((depth) =>
      QUESTION_IDS.map((question) => ({ question, depth, words: 15, unknown: false, stamp: null })),
    );
    const worded = list.map((spec, i) => known(wordedOf(spec, i), false));
    const { lines } = timedLines(
      { worded, openings: [], limits: [], ofAge: [], ofOthers: new Set(), whatIf: false },
      90,
      150,
    );
    const depths = lines.flatMap((line) => worded.find((w) => w.finding.id === line.finding)?.finding.depth ?? []);
    expect(depths.filter((depth) => depth === 'sentence')).toHaveLength(5);
    expect(depths.filter((depth) => depth === 'claim').length).toBeGreaterThanOrEqual(5);
  });

  it('say what figures of others cannot say of an age once, right before the first of them, and only with one', () => {
    fc.assert(
      fc.property(materials, lengths, rates, (material, seconds, rate) => {
        const { lines } = timedLines(material, seconds, rate);
        const isOfOthers = ({ finding }: (typeof lines)[number]) => finding !== null && material.ofOthers.has(finding);
        const at = lines.flatMap(({ text }, i) => (material.ofAge.some((each) => each.text === text) ? [i] : []));
        const first = lines.findIndex(isOfOthers);
        expect(at).toEqual(first < 0 || material.ofAge.length === 0 ? [] : [first - 1]);
      }),
    );
  });

  it('refuse a rate nobody speaks at', () => {
    const none: ScriptMaterial = {
      worded: [],
      openings: [],
      limits: [],
      ofAge: [],
      ofOthers: new Set(),
      whatIf: false,
    };
    for (const rate of [99, 221, Number.NaN]) expect(() => timedLines(none, 30, rate)).toThrow(RangeError);
  });
});
