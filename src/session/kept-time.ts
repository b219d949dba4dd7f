/** How long a case stays on a device that may be shared, unless the person chose to keep it: 12 hours after the last change. */
export const KEPT_FOR_MS = 12 * 60 * 60 * 1000;

/** A clock that went back counts as old too: better gone than kept for years. */
export const isPastItsTime = (savedAtMs: number, keepOnDevice: boolean, nowMs: number): boolean =>
  !keepOnDevice && Math.abs(nowMs - savedAtMs) > KEPT_FOR_MS;
