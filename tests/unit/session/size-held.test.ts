/** No size is told before bands say that one may be: not on the picture, not in its key, not in the tables. */
import { expect, test } from 'vitest';
import type { Explanation } from '../../../src/explain/types';
import { createSession, type ExplainRequest } from '../../../src/session';
import { CONTENT, START, settle } from './helpers';

const TABLES = [{ peakTension: { mpa: 30 } }, { peakTension: { mpa: 12 } }];
const REFERENCE = [20, 6];

/** Bands allow a size for every body but the heaviest. */
const made = ({ file, whatIf, bands }: ExplainRequest): Explanation =>
  ({
    caseId: file.id,
    bone: 'metatarsal-5',
    loads: {
      activity: whatIf.activity ?? 'standing',
      bands: bands === 'none' ? null : {},
      ranksOnly: bands !== 'none' && (whatIf.massKg ?? 0) > 90,
      forcesRank: false,
      told: { tables: TABLES },
      referenceMPa: REFERENCE,
    },
    questions: [{ findings: bands === 'none' ? [{ message: { id: 'loadPending' } }] : [] }],
  }) as unknown as Explanation;

const started = () => {
  const held: { let: boolean; go: (() => void)[] } = { let: true, go: [] };
  const session = createSession({
    content: CONTENT,
    file: START,
    runExplain: async (request) => made(request),
    runBands: async (request) => {
      if (!held.let) await new Promise<void>((go) => held.go.push(go));
      return made(request);
    },
  });
  const loads = () => {
    const now = session.getState().explanation?.loads;
    return (
      now && { ranksOnly: now.ranksOnly, forcesRank: now.forcesRank, of: now.referenceMPa, banded: now.bands !== null }
    );
  };
  return { session, held, loads };
};

const RANKS = { ranksOnly: true, forcesRank: true, of: [30, 12], banded: false };

test('before any bands only more and less is told, and stress is a share of the most', async () => {
  const { session, loads } = started();
  await settle();
  expect(loads()).toEqual(RANKS);
  session.commands.wantBands();
  await settle();
  expect(loads()).toEqual({ ranksOnly: false, forcesRank: false, of: REFERENCE, banded: true });
});

test('a step of a slider keeps what the last bands allowed; another task, or bands that allowed none, do not', async () => {
  const { session, held, loads } = started();
  session.commands.wantBands();
  await settle();
  held.let = false;
  session.commands.setWhatIf({ massKg: 80 });
  await settle();
  expect(loads()).toEqual({ ranksOnly: false, forcesRank: false, of: REFERENCE, banded: false });
  session.commands.setWhatIf({ activity: 'walking' as never });
  await settle();
  expect(loads()).toEqual(RANKS);

  held.let = true;
  for (const go of held.go) go();
  session.commands.setWhatIf({ activity: 'standing' as never, massKg: 95 });
  await settle();
  expect(loads()).toMatchObject({ ranksOnly: true, banded: true });
  held.let = false;
  session.commands.setWhatIf({ massKg: 96 });
  await settle();
  expect(loads()).toEqual({ ...RANKS, forcesRank: false });
});
