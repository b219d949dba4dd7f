/** Measures both feet, away from the page, while they are shown. */
import { useEffect, useMemo, useState } from 'react';
import type { Angle } from '../../anatomy/angles';
import { usePages } from '../context';
import { type Difference, differencesOf } from './differences';
import type { PairOf } from './pairs';

export interface Taken {
  readonly angles: readonly [readonly Angle[], readonly Angle[]];
  readonly differences: readonly Difference[];
}

/** Of this pair and no other: null while it is measured, 'failed' when it cannot be. */
export const useDifferences = ([first, second]: PairOf): Taken | 'failed' | null => {
  const { measureFoot } = usePages();
  const [taken, setTaken] = useState<Taken | 'failed' | null>(null);
  const key = JSON.stringify([first.parameters, second.parameters]);
  const shapes = useMemo(() => JSON.parse(key) as [PairOf[0]['parameters'], PairOf[1]['parameters']], [key]);
  useEffect(() => {
    let live = true;
    setTaken(null);
    Promise.all([measureFoot(shapes[0]), measureFoot(shapes[1])]).then(
      (angles) => {
        if (live) setTaken({ angles, differences: differencesOf(...angles) });
      },
      (failure: unknown) => {
        // Bones that no longer meet have no measures.
        console.warn(failure);
        if (live) setTaken('failed');
      },
    );
    return () => {
      live = false;
    };
  }, [measureFoot, shapes]);
  return taken;
};
