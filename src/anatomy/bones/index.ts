/** The recipe of every bone. Bones of one kind share one. */
import type { SkeletonId } from '../../ids';
import { calcaneus } from './calcaneus';
import { cuboid } from './cuboid';
import { cuneiformMedial } from './cuneiform-medial';
import { cuneiformWedge } from './cuneiform-wedge';
import { fibula } from './fibula';
import { navicular } from './navicular';
import type { Recipe } from './recipe';
import { talus } from './talus';
import { tibia } from './tibia';

export const RECIPES: Partial<Readonly<Record<SkeletonId, Recipe>>> = {
  calcaneus,
  talus,
  navicular,
  cuboid,
  cuneiformMedial,
  cuneiformIntermediate: cuneiformWedge('navicular-cuneiformIntermediate', 'cuneiformIntermediate-metatarsal2'),
  cuneiformLateral: cuneiformWedge('navicular-cuneiformLateral', 'cuneiformLateral-metatarsal3'),
  fibula,
  tibia,
};
