/** The plate's surfaces as three.js holds them. */
import { BufferAttribute, BufferGeometry } from 'three';
import { type ContourMesh, contourMesh } from './contour-mesh';
import type { Facets } from './plate-mesh';

export const facetGeometry = ({ positions, normals, bary, along }: Facets): BufferGeometry => {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(positions, 3));
  geometry.setAttribute('normal', new BufferAttribute(normals, 3));
  geometry.setAttribute('bary', new BufferAttribute(bary, 3));
  geometry.setAttribute('along', new BufferAttribute(along, 3));
  return geometry;
};

export const contourGeometry = (parts: Parameters<typeof contourMesh>[0]): BufferGeometry => {
  const { positions, smooth, bone, indices }: ContourMesh = contourMesh(parts);
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(positions, 3));
  geometry.setAttribute('smoothNormal', new BufferAttribute(smooth, 3));
  geometry.setAttribute('bone', new BufferAttribute(bone, 1));
  geometry.setIndex(new BufferAttribute(indices, 1));
  return geometry;
};
