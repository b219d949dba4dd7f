/** Two pictures under one hand: what is done to one is done to the other, in the mirror where the other is of the other side. Pure. */
import type { Camera } from '../camera/camera';
import type { Engine } from '../engine';
import type { Handled } from '../use-gestures';

/** The eye in the mirror: it sees the mirrored foot as this one sees the foot, right and left exchanged. */
export const mirrored = (camera: Camera): Camera => {
  const [x, y, z] = camera.target;
  return { ...camera, target: [-x, y, z], azimuthRad: -camera.azimuthRad };
};

/** Hands on the one picture; `pick` chooses nothing, for the pictures are about the whole foot. */
export const linked = (
  own: Pick<Engine, 'orbit' | 'pan' | 'zoom' | 'eye'>,
  other: Pick<Engine, 'follow'>,
  inMirror: boolean,
): Handled => {
  const bring = (): void => {
    if (own.eye !== null) other.follow(inMirror ? mirrored(own.eye) : own.eye);
  };
  return {
    orbit: (x, y) => {
      own.orbit(x, y);
      bring();
    },
    pan: (x, y) => {
      own.pan(x, y);
      bring();
    },
    zoom: (factor, x, y) => {
      own.zoom(factor, x, y);
      bring();
    },
    pick: () => null,
  };
};
