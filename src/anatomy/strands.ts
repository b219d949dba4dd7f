/**
 * The way of a ligament, tendon, vessel or nerve on the foot at hand, drawn and not measured: a smooth line through its points
 * (strand-schema.ts) that is kept out of the bones. Ends on a footprint stay on it. mm, foot frame.
 */
import { CatmullRomCurve3 } from 'three/src/extras/curves/CatmullRomCurve3.js';
import { Vector3 } from 'three/src/math/Vector3.js';
import { add, length, scale, subtract, type Vec3 } from '../units';
import { meshOf } from './bone-axis';
import { type SurfaceIndex, surfaceIndex } from './fit/surface-index';
import { placeOn, scaleOn } from './places';
import { regionsOf } from './regions';
import type { StrandPoint, StrandRule } from './strand-schema';
import type { Foot } from './types';

/** Distance between neighbouring points of a drawn way. */
const STEP_MM = 2;
/** What is drawn beside a bone stays so far off it, but for the stretch next to its ends. */
const CLEAR_MM = 1;
const END_MM = 4;
/** No point of a way lies deeper in a bone. */
const REACH_MM = 30;
/** Out of one bone may be into its neighbour: so often is looked again. */
const TIMES = 4;

const pointOn = (foot: Foot, point: StrandPoint, regionAt: (id: string) => Vec3): Vec3 => {
  if ('region' in point) return regionAt(point.region);
  const { at, out } = placeOn(foot, point.bone, point);
  return add(at, scale(out, point.off * scaleOn(foot, point.bone)));
};

/** What every strand of a foot asks for. */
interface Around {
  readonly surfaces: readonly SurfaceIndex[];
  readonly centres: ReadonlyMap<string, Vec3>;
}
const known = new WeakMap<Foot, Around>();
const aroundOn = (foot: Foot): Around => {
  const around = known.get(foot) ?? {
    surfaces: [...foot.bones.keys()].map((bone) => surfaceIndex(meshOf(foot, bone))),
    centres: new Map(regionsOf(foot).map(({ id, centre }) => [id, centre])),
  };
  known.set(foot, around);
  return around;
};

/** The point, moved out of any bone in which, or too near to which, it lies. */
const keptOut = (surfaces: readonly SurfaceIndex[], from: Vec3): Vec3 => {
  let p = from;
  for (let n = 0; n < TIMES; n++) {
    let moved = false;
    for (const surface of surfaces) {
      const hit = surface.nearest(p[0], p[1], p[2], REACH_MM);
      if (hit === null || (!hit.inside && hit.distanceMm >= CLEAR_MM)) continue;
      // `way` leads from the surface to the point: inwards from within, outwards from without.
      p = hit.inside
        ? subtract(p, scale(hit.way, hit.distanceMm + CLEAR_MM))
        : add(p, scale(hit.way, CLEAR_MM - hit.distanceMm));
      moved = true;
    }
    if (!moved) break;
  }
  return p;
};

/** The way of a strand. Throws RangeError for one that is not told, or whose footprint the foot does not have. */
export const strandOn = (foot: Foot, id: string): readonly Vec3[] => {
  const rule: StrandRule | undefined = foot.reference.strands.find((r) => r.id === id);
  if (rule === undefined) throw new RangeError(`no strand ${id}`);
  const { surfaces, centres } = aroundOn(foot);
  const points = rule.points.map((point) =>
    pointOn(foot, point, (name) => {
      const centre = centres.get(name);
      if (centre === undefined) throw new RangeError(`${id}: the foot has no region ${name}`);
      return centre;
    }),
  );
  const curve = new CatmullRomCurve3(
    points.map((p) => new Vector3(...p)),
    false,
    'centripetal',
  );
  const way = curve
    .getSpacedPoints(Math.max(2, Math.ceil(curve.getLength() / STEP_MM)))
    .map((p): Vec3 => [p.x, p.y, p.z]);
  const [first, last] = [way[0], way.at(-1)];
  return way.map((p) => {
    const nearEnd = [first, last].some((end) => end !== undefined && length(subtract(p, end)) < END_MM);
    return nearEnd ? p : keptOut(surfaces, p);
  });
};
