/**
 * Does the spread hold what it promises? Each study of a group is left out in turn and forecast from the others. Times only:
 * rates have too few trials for it. Misses are part of the result.
 */
import type { Endpoint, InjuryId, Level, OptionId } from '../ids';
import { armsFor, type StudyLike } from './arms';
import { shareBy, weekBy } from './distributions';
import { curveArms } from './forecast';
import { LEAST_ARMS, middleOfStudy, personOf, poolOf } from './pooling';
import type { Coverage, FittedArm, LeftOut, TimeFit } from './types';

const LOW = 0.1;
const HIGH = 0.9;
const middle80 = (fit: TimeFit): [number, number] => [weekBy(fit, LOW), weekBy(fit, HIGH)];

const leaveOut = (arm: FittedArm, others: readonly FittedArm[]): LeftOut => {
  const pool = poolOf<Endpoint>(others);
  const [low, high] = middle80(middleOfStudy(pool, arm.n));
  // What is pooled is the median; the mean of a log-normal lies above it by half its variance.
  const up = arm.centre === 'mean' ? Math.exp(pool.within ** 2 / 2) : 1;
  const centreWeeks: [number, number] = [low * up, high * up];
  const personWeeks = middle80(personOf(pool));
  return {
    arm,
    centreWeeks,
    centreInside: arm.centreWeeks >= centreWeeks[0] && arm.centreWeeks <= centreWeeks[1],
    personWeeks,
    peopleInside: shareBy(arm.fit, personWeeks[1]) - shareBy(arm.fit, personWeeks[0]),
  };
};

interface Group {
  readonly injury: InjuryId;
  readonly option: OptionId;
  readonly endpoint: Endpoint;
  readonly level: Level;
}

const groupsIn = (studies: readonly StudyLike[]): Group[] => {
  const groups = new Map<string, Group>();
  for (const { injuries, option, time, level: first, alsoLevels = [] } of studies)
    for (const injury of injuries)
      for (const level of [first, ...alsoLevels])
        if (time) {
          const { endpoint } = time;
          groups.set(`${injury} ${option} ${endpoint} ${level}`, { injury, option, endpoint, level });
        }
  return [...groups.values()];
};

const coverageIn = (group: Group, arms: readonly FittedArm[]): Coverage => {
  if (arms.length <= LEAST_ARMS) return { ...group, kind: 'tooFew', fitted: arms.length };
  const left = arms.map((arm) =>
    leaveOut(
      arm,
      arms.filter((other) => other !== arm),
    ),
  );
  return {
    ...group,
    kind: 'checked',
    left,
    centresInside: left.filter((l) => l.centreInside).length,
    peopleInside: left.reduce((all, l) => all + l.peopleInside, 0) / left.length,
  };
};

/** Every group of the same injury, option, endpoint and level with arms that may speak: as a forecast puts them together. */
export const coverageOf = (studies: readonly StudyLike[]): Coverage[] =>
  groupsIn(studies).flatMap((group) => {
    const arms = armsFor(studies, group);
    return arms.length === 0 ? [] : [coverageIn(group, curveArms(arms))];
  });
