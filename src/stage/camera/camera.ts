/**
 * The camera: a parallel projection, as engineers draw, so that the scale bar is true everywhere in the picture. World frame of
 * the foot (mm, +Y up). Azimuth 0 looks from the toes, -90 degrees from the outer side of a right foot. Pure.
 */
import { add, dot, radians, scale, subtract, type Vec3 } from '../../units';

export interface Camera {
  readonly target: Vec3;
  readonly azimuthRad: number;
  readonly elevationRad: number;
  /** World millimetres per CSS pixel. */
  readonly mmPerPx: number;
}

/** Unit vectors of the picture in the world: right, up, and towards the eye. */
export interface Basis {
  readonly right: Vec3;
  readonly up: Vec3;
  readonly eye: Vec3;
}

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** Space kept free of the foot, CSS px. */
export interface Insets {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export const basisOf = ({ azimuthRad: a, elevationRad: e }: Pick<Camera, 'azimuthRad' | 'elevationRad'>): Basis => ({
  right: [Math.cos(a), 0, -Math.sin(a)],
  up: [-Math.sin(e) * Math.sin(a), Math.cos(e), -Math.sin(e) * Math.cos(a)],
  eye: [Math.cos(e) * Math.sin(a), Math.sin(e), Math.cos(e) * Math.cos(a)],
});

/** World point -> [x, y, depth]; px from the top left, depth in mm towards the eye. */
export const project = (camera: Camera, basis: Basis, size: Size, p: Vec3): readonly [number, number, number] => {
  const d = subtract(p, camera.target);
  return [
    size.width / 2 + dot(d, basis.right) / camera.mmPerPx,
    size.height / 2 - dot(d, basis.up) / camera.mmPerPx,
    dot(d, basis.eye),
  ];
};

/** The ray through a pixel: its start far in front of the target, its direction away from the eye. */
export const rayAt = (camera: Camera, size: Size, x: number, y: number): { from: Vec3; along: Vec3 } => {
  const { right, up, eye } = basisOf(camera);
  const inPlane = add(
    scale(right, (x - size.width / 2) * camera.mmPerPx),
    scale(up, (size.height / 2 - y) * camera.mmPerPx),
  );
  return { from: add(add(camera.target, inPlane), scale(eye, 1000)), along: scale(eye, -1) };
};

export const FINEST_MM_PER_PX = 0.03;
const POLE = radians(90);

export const orbit = (camera: Camera, azimuthRad: number, elevationRad: number): Camera => ({
  ...camera,
  azimuthRad: camera.azimuthRad + azimuthRad,
  elevationRad: Math.min(POLE, Math.max(-POLE, camera.elevationRad + elevationRad)),
});

export const pan = (camera: Camera, xPx: number, yPx: number): Camera => {
  const { right, up } = basisOf(camera);
  const move = add(scale(right, -xPx * camera.mmPerPx), scale(up, yPx * camera.mmPerPx));
  return { ...camera, target: add(camera.target, move) };
};

/** Magnifies about a point of the picture, which stays where it is. */
export const zoomAbout = (camera: Camera, size: Size, factor: number, x: number, y: number): Camera => {
  const mmPerPx = Math.max(FINEST_MM_PER_PX, camera.mmPerPx / factor);
  const k = camera.mmPerPx - mmPerPx;
  const { right, up } = basisOf(camera);
  const move = add(scale(right, (x - size.width / 2) * k), scale(up, (size.height / 2 - y) * k));
  return { ...camera, target: add(camera.target, move), mmPerPx };
};

export interface Bounds {
  readonly min: Vec3;
  readonly max: Vec3;
}

/** Of points, 3 numbers each: the same box for a foot and its mirror image. */
export const boundsOf = (points: ArrayLike<number>): Bounds => {
  const reach = (k: number, pick: (a: number, b: number) => number, start: number): number => {
    let value = start;
    for (let i = k; i < points.length; i += 3) value = pick(value, points[i] ?? value);
    return value;
  };
  const wide = Math.max(Math.abs(reach(0, Math.min, Infinity)), Math.abs(reach(0, Math.max, -Infinity)));
  const [bottom, back] = [reach(1, Math.min, Infinity), reach(2, Math.min, Infinity)];
  return { min: [-wide, bottom, back], max: [wide, reach(1, Math.max, -Infinity), reach(2, Math.max, -Infinity)] };
};

/** The camera that sees all points inside the picture less its insets. Points: 3 numbers each. */
export const fitCamera = (
  points: ArrayLike<number>,
  angles: { readonly azimuthRad: number; readonly elevationRad: number },
  size: Size,
  insets: Insets,
  finest = FINEST_MM_PER_PX,
): Camera => {
  const { right, up, eye } = basisOf(angles);
  const low = [Infinity, Infinity, Infinity];
  const high = [-Infinity, -Infinity, -Infinity];
  for (let i = 0; i + 2 < points.length; i += 3) {
    const p: Vec3 = [points[i] ?? 0, points[i + 1] ?? 0, points[i + 2] ?? 0];
    [right, up, eye].forEach((axis, k) => {
      const d = dot(p, axis);
      low[k] = Math.min(low[k] ?? d, d);
      high[k] = Math.max(high[k] ?? d, d);
    });
  }
  const [x0 = 0, y0 = 0, z0 = 0] = low;
  const [x1 = 0, y1 = 0, z1 = 0] = high;
  const across = Math.max(40, size.width - insets.left - insets.right);
  const down = Math.max(40, size.height - insets.top - insets.bottom);
  const mmPerPx = Math.max(finest, (x1 - x0) / across, (y1 - y0) / down);
  // The middle of the points belongs in the middle of the free box, the target in the middle of the picture.
  const offX = ((insets.left - insets.right) / 2) * mmPerPx;
  const offY = ((insets.bottom - insets.top) / 2) * mmPerPx;
  const target = add(
    add(scale(right, (x0 + x1) / 2 - offX), scale(up, (y0 + y1) / 2 - offY)),
    scale(eye, (z0 + z1) / 2),
  );
  return { ...angles, target, mmPerPx };
};

/** Never loses the foot: the target stays in the foot's box, the picture never spans more than `widest` mm per px. */
export const keepInside = (camera: Camera, bounds: Bounds, widest: number): Camera => ({
  ...camera,
  target: camera.target.map((value, k) =>
    Math.min(bounds.max[k] ?? value, Math.max(bounds.min[k] ?? value, value)),
  ) as unknown as Vec3,
  mmPerPx: Math.min(widest, Math.max(FINEST_MM_PER_PX, camera.mmPerPx)),
});

const turn = (from: number, to: number): number => {
  const full = 2 * Math.PI;
  return ((((to - from + Math.PI) % full) + full) % full) - Math.PI;
};

/** Part of the way from one camera to another, 0 to 1, by the shorter turn; zoom in equal ratios. */
export const between = (from: Camera, to: Camera, share: number): Camera => ({
  target: add(scale(from.target, 1 - share), scale(to.target, share)),
  azimuthRad: from.azimuthRad + turn(from.azimuthRad, to.azimuthRad) * share,
  elevationRad: from.elevationRad + (to.elevationRad - from.elevationRad) * share,
  mmPerPx: from.mmPerPx * (to.mmPerPx / from.mmPerPx) ** share,
});
