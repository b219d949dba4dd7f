/** What a factor must hold to: a size lies in its interval; what changes a forecast was seen, and of these very breaks. */
import type { Breach } from './rules';
import type { Factor } from './schema';

/** A factor whose sizes change no forecast says why. */
export const factorBreaches = (r: Factor): Breach[] => {
  const breaches = r.effects.flatMap((e, i): Breach[] => {
    const path = ['effects', i];
    const carries = e.about === 'healing' && e.bones === 'fifth metatarsal' && e.evidence.mark === 'seen';
    const orderly = 0 < e.low && e.low <= e.value && e.value <= e.high;
    const got = `${e.value} (${e.low} to ${e.high})`;
    return [
      ...(orderly ? [] : [{ path: [...path, 'value'], expected: 'a ratio above 0 inside its interval', got }]),
      ...(e.inForecast && !carries
        ? [{ path: [...path, 'inForecast'], expected: 'seen, of the healing of these breaks', got: 'true' }]
        : []),
    ];
  });
  const silent = r.limit === null && (r.waits.length > 0 || r.effects.some((e) => !e.inForecast));
  return silent ? [...breaches, { path: ['limit'], expected: 'why it changes no forecast', got: 'none' }] : breaches;
};
