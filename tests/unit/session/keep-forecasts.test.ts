/** Odds are kept in the case before a follow-up or an ending overtakes them. */
import { describe, expect, it } from 'vitest';
import { newClaim } from '../../../src/cases';
import { type InjuryId, idOf, type OptionId } from '../../../src/ids';
import { keepingForecasts } from '../../../src/session/keep-forecasts';
import type { IsoDate } from '../../../src/units';
import { CONFIRMED, caseOf } from '../../tools/explained';
import { explained } from '../../tools/one-level';

const day = (text: string) => text as IsoDate;
const TODAY = day('2026-02-20');
const file = caseOf(
  ['injury', idOf<InjuryId>('mt5-metaphyseal')],
  ['treatment', { option: idOf<OptionId>('screw'), on: day('2026-01-05') }],
  ['level', 'professional'],
);
const explanation = explained(file);
const followUp = newClaim(file, 'followUp', { finding: 'tender', on: day('2026-02-16') }, CONFIRMED);
const shown = { explanation, stale: false };

describe('before a follow-up', () => {
  it('keeps each forecast as it was shown, with its day and its start', () => {
    const { forecasts } = keepingForecasts(file, followUp, shown, TODAY);
    const pooled = explanation.forecasts.filter(({ steps }) => steps.length > 0);
    expect(pooled.length).toBeGreaterThan(0);
    expect(forecasts.map(({ endpoint }) => endpoint)).toEqual(pooled.map(({ endpoint }) => endpoint));
    for (const kept of forecasts) {
      expect(kept).toMatchObject({ madeOn: TODAY, start: '2026-01-05', atWeek: 0, injury: 'mt5-metaphyseal' });
      expect(kept.studies.length).toBeGreaterThanOrEqual(3);
    }
  });

  it('keeps the same odds once', () => {
    const once = keepingForecasts(file, followUp, shown, TODAY);
    expect(keepingForecasts(once, followUp, shown, TODAY)).toEqual(once);
  });

  it('keeps nothing of an explanation that is on its way, of a what-if, or for another claim', () => {
    expect(keepingForecasts(file, followUp, { explanation, stale: true }, TODAY)).toBe(file);
    expect(keepingForecasts(file, followUp, { explanation: null, stale: false }, TODAY)).toBe(file);
    const tried = { ...explanation, whatIf: { massKg: 90 } };
    expect(keepingForecasts(file, followUp, { explanation: tried, stale: false }, TODAY)).toBe(file);
    const level = newClaim(file, 'level', 'professional', CONFIRMED);
    expect(keepingForecasts(file, level, shown, TODAY)).toBe(file);
  });
});
