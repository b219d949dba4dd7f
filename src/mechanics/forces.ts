/** Force on a cut across a member and its moments about the section's centroid: Mz > 0 stretches the plantar side, My > 0 the lateral. */
export interface InternalForces {
  readonly axialN: number;
  readonly shearDorsalN: number;
  readonly shearLateralN: number;
  readonly bendingUpDownNmm: number;
  readonly bendingSidewaysNmm: number;
  readonly torsionNmm: number;
}
