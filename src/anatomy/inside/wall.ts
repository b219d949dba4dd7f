/** The cortex of one bone of one foot: its thickness on each side, at each share of the bone's length. mm. */
import { boneAxis, fromBone, inBone, meshOf } from '../bone-axis';
import { sliceMesh } from '../slice';
import type { BoneId } from '../../ids';
import type { BoneAxis, Foot } from '../types';
import { contoursAt } from './contours-at';
import { surfaceOf, type Surface } from './depth';
import { type CortexFigure, type CortexStation, type CortexTube, type InsideOfShape, placeOf, thicknessOf, type Wall, widthOf } from './schema';
