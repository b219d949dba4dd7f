/** In which order people of a level ask for the points that studies count to (common practice). */
import type { Endpoint, Level } from '../ids';

/** What people of a level ask for first. All levels mixed: what most studies count. */
export const ENDPOINT_ORDER: Readonly<Record<Level | 'any', readonly Endpoint[]>> = {
  professional: [
    'match play',
    'performance',
    'sport',
    'training',
    'release',
    'clinical healing',
    'union',
    'work',
    'activity',
  ],
  competitive: [
    'sport',
    'match play',
    'performance',
    'activity',
    'training',
    'release',
    'clinical healing',
    'union',
    'work',
  ],
  recreational: [
    'sport',
    'activity',
    'training',
    'performance',
    'match play',
    'clinical healing',
    'union',
    'release',
    'work',
  ],
  everyday: [
    'clinical healing',
    'union',
    'work',
    'activity',
    'sport',
    'release',
    'training',
    'performance',
    'match play',
  ],
  any: ['sport', 'performance', 'match play', 'clinical healing', 'union', 'work', 'activity', 'release', 'training'],
};
