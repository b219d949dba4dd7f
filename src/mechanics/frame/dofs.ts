/** The six motions of a node or of a member's end, in their order everywhere. */
export const DOFS = ['ux', 'uy', 'uz', 'rx', 'ry', 'rz'] as const;
export type Dof = (typeof DOFS)[number];
export const dofIndex = (dof: Dof): number => DOFS.indexOf(dof);
