/** The part of gltf-validator that the tests use; the package ships no types. */
declare module 'gltf-validator' {
  interface Report {
    readonly issues: {
      readonly numErrors: number;
      readonly numWarnings: number;
      readonly numInfos: number;
      readonly numHints: number;
      readonly messages: readonly { readonly code: string; readonly message: string; readonly pointer?: string }[];
    };
  }
  const validator: { readonly validateBytes: (bytes: Uint8Array, options?: object) => Promise<Report> };
  export default validator;
}
