/** The recipe of every bone. Bones of one kind share one. */
import type { SkeletonId } from '../../ids';
import { calcaneus } from './calcaneus';
import { fibula } from './fibula';
import type { Recipe } from './recipe';
import { tibia } from './tibia';

export const RECIPES: Partial<Readonly<Record<SkeletonId, Recipe>>> = {
  calcaneus,
  fibula,
  tibia,
};
