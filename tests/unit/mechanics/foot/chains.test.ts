import { expect, test } from 'vitest';
import { segmentsBetween } from '../../../../src/mechanics/foot/assemble';
import { runCase } from '../../../../src/mechanics/foot/case-draw';
import { chainStiffness } from '../../../../src/mechanics/frame/flexible-member';
import { modelLoadedFoot, PERSON, TOLD, toldCaseOf } from '../../../tools/loaded-foot';

const foot = modelLoadedFoot();

// The frame makes a chain once on the standing bone and turns it; here each is made where its bone stands in the pose.
test.each(['standing', 'walking', 'heel-raise', 'inversion-roll-pointed-foot', 'side-step-cut'])(
  '%s: a bone carried as one piece has the stiffness of one made in the pose',
  (id) => {
    for (const figures of [TOLD, { ...TOLD, wall: 0.5, cortexYoung: 14 }]) {
      const solved = runCase(foot, toldCaseOf(id), figures, PERSON);
      if ('kind' in solved) throw new Error(`${id}: ${solved.kind}`);
      const { marks, nodes, placing, assembled } = solved.ready;
      for (const { ray, from, to, stiffness } of assembled.members) {
        const { knots } = nodes.rays[ray];
        const made = chainStiffness(segmentsBetween(marks, knots, placing, foot.sections, figures, ray, from, to));
        const largest = Math.max(...made.map(Math.abs));
        stiffness.forEach((x, i) => {
          expect(Math.abs(x - (made[i] as number)) / largest).toBeLessThan(1e-10);
        });
      }
    }
  },
);
