import { describe, expect, test } from 'vitest';
import { RAYS, readSections, sectionsText } from '../../../../src/mechanics';
import { modelLoadedFoot } from '../../../tools/loaded-foot';

const { sections } = modelLoadedFoot();

describe('the file of sections', () => {
  test('comes back as the sections that were written, to the last digit', () => {
    expect(readSections(JSON.parse(sectionsText(sections)))).toEqual(sections);
  });

  test('holds every ray with both ends of the bands at every cut', () => {
    for (const ray of RAYS) {
      const { usual, thick, thin } = sections[ray];
      expect(usual.length).toBeGreaterThan(30);
      expect([thick?.length, thin?.length]).toEqual([usual.length, usual.length]);
      // Along the shaft; at the tips the ends are the means of cuts that differ.
      const shaft = (all: readonly { readonly areaMm2: number }[] | null): number =>
        (all ?? []).slice(8, 25).reduce((sum, { areaMm2 }) => sum + areaMm2, 0);
      const told = shaft(usual.map(({ section }) => section));
      expect(shaft(thick)).toBeGreaterThan(told);
      expect(shaft(thin)).toBeLessThan(told);
    }
  });

  test('anything else is refused', () => {
    expect(() => readSections({})).toThrow();
    const short = JSON.parse(sectionsText(sections));
    delete short[3].usual[4].section.jMm4;
    expect(() => readSections(short)).toThrow();
    const word = JSON.parse(sectionsText(sections));
    word[2].thin[0].areaMm2 = '12';
    expect(() => readSections(word)).toThrow();
  });
});
