/** The recipe of every bone. Bones of one kind share one. */
import type { SkeletonId } from '../../ids';
import { calcaneus } from './calcaneus';
import { cuboid } from './cuboid';
import { cuneiformMedial } from './cuneiform-medial';
import { cuneiformWedge } from './cuneiform-wedge';
import { fibula } from './fibula';
import { metatarsal } from './metatarsal';
import { metatarsalFifth } from './metatarsal-fifth';
import { metatarsalFirst } from './metatarsal-first';
import { navicular } from './navicular';
import { phalanxDistal } from './phalanx-distal';
import { phalanxDistalLesser } from './phalanx-distal-lesser';
import { phalanxMiddle } from './phalanx-middle';
import { phalanxProximal } from './phalanx-proximal';
import type { Recipe } from './recipe';
import { sesamoid } from './sesamoid';
import { talus } from './talus';
import { tibia } from './tibia';

export const RECIPES: Readonly<Record<SkeletonId, Recipe>> = {
  calcaneus,
  talus,
  navicular,
  cuboid,
  cuneiformMedial,
  cuneiformIntermediate: cuneiformWedge(
    'navicular-cuneiformIntermediate',
    'cuneiformIntermediate-metatarsal2',
    'outer',
  ),
  cuneiformLateral: cuneiformWedge('navicular-cuneiformLateral', 'cuneiformLateral-metatarsal3', 'inner'),
  metatarsal1: metatarsalFirst,
  metatarsal2: metatarsal('cuneiformIntermediate-metatarsal2', 'metatarsal2-phalanxProximal2'),
  metatarsal3: metatarsal('cuneiformLateral-metatarsal3', 'metatarsal3-phalanxProximal3'),
  metatarsal4: metatarsal('cuboid-metatarsal4', 'metatarsal4-phalanxProximal4'),
  metatarsal5: metatarsalFifth,
  sesamoidMedial: sesamoid('metatarsal1-sesamoidMedial'),
  sesamoidLateral: sesamoid('metatarsal1-sesamoidLateral'),
  phalanxProximal1: phalanxProximal('metatarsal1-phalanxProximal1', 'phalanxProximal1-phalanxDistal1'),
  phalanxProximal2: phalanxProximal('metatarsal2-phalanxProximal2', 'phalanxProximal2-phalanxMiddle2'),
  phalanxProximal3: phalanxProximal('metatarsal3-phalanxProximal3', 'phalanxProximal3-phalanxMiddle3'),
  phalanxProximal4: phalanxProximal('metatarsal4-phalanxProximal4', 'phalanxProximal4-phalanxMiddle4'),
  phalanxProximal5: phalanxProximal('metatarsal5-phalanxProximal5', 'phalanxProximal5-phalanxMiddle5'),
  phalanxMiddle2: phalanxMiddle('phalanxProximal2-phalanxMiddle2', 'phalanxMiddle2-phalanxDistal2'),
  phalanxMiddle3: phalanxMiddle('phalanxProximal3-phalanxMiddle3', 'phalanxMiddle3-phalanxDistal3'),
  phalanxMiddle4: phalanxMiddle('phalanxProximal4-phalanxMiddle4', 'phalanxMiddle4-phalanxDistal4'),
  phalanxMiddle5: phalanxMiddle('phalanxProximal5-phalanxMiddle5', 'phalanxMiddle5-phalanxDistal5'),
  phalanxDistal1: phalanxDistal('phalanxProximal1-phalanxDistal1'),
  phalanxDistal2: phalanxDistalLesser('phalanxMiddle2-phalanxDistal2'),
  phalanxDistal3: phalanxDistalLesser('phalanxMiddle3-phalanxDistal3'),
  phalanxDistal4: phalanxDistalLesser('phalanxMiddle4-phalanxDistal4'),
  phalanxDistal5: phalanxDistalLesser('phalanxMiddle5-phalanxDistal5'),
  tibia,
  fibula,
};
