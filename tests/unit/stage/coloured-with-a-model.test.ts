/**
 * Colour stands only where a model speaks: every bone of the content, every injury and every way of breaking, in every activity,
 * through the real explanation on the foot that is shipped, in every question.
 */
import { describe, expect, it } from 'vitest';
import type { CaseFile } from '../../../src/cases';
import { QUESTION_IDS } from '../../../src/ids';
import { FIELD_LENGTH } from '../../../src/stage/draw/materials';
import { sceneOf } from '../../../src/stage/scene/scene';
import { NOTHING_ASKED } from '../../../src/stage/showing';
import type { Explanation, StationTable } from '../../../src/stage/types';
import { caseOf, content, explained, drawnFoot as foot } from '../../tools/explained';

const layersMade = (explanation: Explanation) =>
  QUESTION_IDS.map((question) => {
    const asked = { ...NOTHING_ASKED, content, explanation, question, narrow: false, contourPx: 1.9 };
    return { question, layer: sceneOf(foot, asked).layer };
  });
const layers = new Map<Explanation, ReturnType<typeof layersMade>>();
/** Kept: every test asks for all of them. */
const layersOf = (explanation: Explanation) => {
  const made = layers.get(explanation) ?? layersMade(explanation);
  layers.set(explanation, made);
  return made;
};

/** The model that the content names for this break: that of the way stated, else of the first way its class usually happens. */
const modelFor = (injury: string | null, mechanism: string | null): string | undefined => {
  const usual = content.injuries.find(({ id }) => id === injury)?.mechanisms[0];
  return content.mechanisms.find(({ id }) => id === (mechanism ?? usual))?.model;
};

/** Both neighbours of a place along the bone are stations that the theory holds for. */
const isHeld = ({ stations }: StationTable, sMm: number): boolean => {
  const after = stations.find((station) => station.sMm >= sMm - 1e-9);
  const before = stations.findLast((station) => station.sMm <= sMm + 1e-9);
  return after !== undefined && before !== undefined && !after.outsideBeamTheory && !before.outsideBeamTheory;
};

interface Walked {
  readonly name: string;
  readonly explanation: Explanation;
  readonly model: string | undefined;
}

const activities = content.activities.map(({ id }) => id);
const walk = (name: string, file: CaseFile, model: (e: Explanation) => string | undefined): Walked[] =>
  activities.map((activity) => {
    const explanation = explained(file, { activity });
    return { name: `${name}, ${activity}`, explanation, model: model(explanation) };
  });

const byInjury = content.bones.flatMap((bone) =>
  content.injuries.flatMap((injury) =>
    walk(`${bone.id}, ${injury.id}`, caseOf(['bone', bone.id], ['injury', injury.id]), (e) => modelFor(e.injury, null)),
  ),
);
const byMechanism = content.bones.flatMap((bone) =>
  content.mechanisms.flatMap(({ id }) =>
    walk(`${bone.id}, ${id}`, caseOf(['bone', bone.id], ['mechanism', id]), (e) => modelFor(e.injury, id)),
  ),
);
const all: readonly Walked[] = [...byInjury, ...byMechanism];

describe('colour', () => {
  it('is on no bone without a model of that bone and of that way of breaking, and in no other question', () => {
    let coloured = 0;
    for (const { name, explanation, model } of all)
      for (const { question, layer } of layersOf(explanation)) {
        if (layer.kind !== 'stress') continue;
        coloured += 1;
        expect(question, name).toBe('how');
        expect(model, name).toBe('beam stress');
        expect(explanation.stations?.bone, name).toBe(explanation.bone);
        expect(layer.topMPa, name).toBeGreaterThan(0);
      }
    expect(coloured).toBeGreaterThan(activities.length);
  });

  it('is on no stretch of a bone outside the theory, and on every stretch within it', () => {
    let held = 0;
    for (const { name, explanation } of all) {
      const { stations } = explanation;
      for (const { layer } of layersOf(explanation)) {
        if (layer.kind !== 'stress' || stations === null) continue;
        for (let i = 0; i < FIELD_LENGTH; i += 1) {
          const sMm = (i / (FIELD_LENGTH - 1)) * layer.axis.lengthMm;
          const isColoured = layer.field[4 * i + 3] === 0;
          const first = stations.stations[0]?.sMm ?? 0;
          // At the very first station there is nothing before it to mix with.
          if (Math.abs(sMm - first) < 1e-6) continue;
          expect(isColoured, `${name}, at ${sMm} mm`).toBe(isHeld(stations, sMm));
          if (isColoured) held += 1;
        }
      }
    }
    expect(held).toBeGreaterThan(FIELD_LENGTH);
  });

  it('never passes the last of the six steps, and shows walking itself up to once walking', () => {
    for (const { name, explanation } of all) {
      const [how] = layersOf(explanation).filter(({ layer }) => layer.kind === 'stress');
      const { stations, loads } = explanation;
      if (how?.layer.kind !== 'stress' || stations === null || loads === null) continue;
      const most = Math.max(stations.peakTension.mpa, -stations.peakCompression.mpa);
      expect(most, name).toBeLessThanOrEqual(how.layer.topMPa * (1 + 1e-9));
      const ray = loads.told.tables.findIndex(({ bone }) => bone === stations.bone);
      if (loads.activity === 'walking')
        expect(stations.peakTension.mpa / (loads.referenceMPa[ray] ?? 0), name).toBeCloseTo(1, 6);
    }
  });
});
