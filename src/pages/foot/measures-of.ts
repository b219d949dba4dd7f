/** The measures of films as content tells of them: their names, and from where each is looked at. */
import * as v from 'valibot';
import type { Angle } from '../../anatomy/angles';
import { anglesSchema, type Measure } from '../../anatomy/angles/schema';
import type { ViewId } from '../../session/types';

/** From where a measure is drawn as on its film. */
export const FILM_VIEWS: Readonly<Record<Angle['view'], ViewId>> = {
  lateral: 'inner',
  dorsoplantar: 'top',
  rear: 'back',
};

export const measuresOf = (shape: unknown): readonly Measure[] =>
  v.parse(anglesSchema, typeof shape === 'object' && shape !== null && 'angles' in shape ? shape.angles : []);

/** Words of the trade are for those who study it. */
export const measureName = ({ name, trade }: Measure, study: boolean): string => (study ? (trade[0] ?? name) : name);
