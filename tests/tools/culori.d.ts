/** The part of culori 4.0.2 that the tests use; the package ships no types. */
declare module 'culori' {
  export const wcagContrast: (a: string, b: string) => number;
  export const differenceCiede2000: () => (a: unknown, b: unknown) => number;
  type Filter = (colour: string) => unknown;
  export const filterDeficiencyProt: (severity: number) => Filter;
  export const filterDeficiencyDeuter: (severity: number) => Filter;
  export const filterDeficiencyTrit: (severity: number) => Filter;
}
