/** The recipe of every bone. Bones of one kind share one. */
import type { SkeletonId } from '../../ids';
import { calcaneus } from './calcaneus';
import type { Recipe } from './recipe';

export const RECIPES: Partial<Readonly<Record<SkeletonId, Recipe>>> = {
  calcaneus,
};
