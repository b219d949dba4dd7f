/** The yardstick for the first picture: three.js, one light, the same model file, nothing else. */
import {
  AmbientLight,
  BufferAttribute,
  BufferGeometry,
  DirectionalLight,
  Mesh,
  MeshLambertMaterial,
  PerspectiveCamera,
  Scene,
  WebGLRenderer,
} from 'three';
import { decodeGlb } from '../../../src/anatomy';

const model = decodeGlb(new Uint8Array(await (await fetch('./models/foot-right.glb')).arrayBuffer()));
const scene = new Scene();
scene.add(new AmbientLight(0xffffff, 1));
const light = new DirectionalLight(0xffffff, 2);
light.position.set(-1, 1, 1);
scene.add(light);
const material = new MeshLambertMaterial({ color: 0xf0e6c8, flatShading: true });
for (const mesh of [...model.bones.values(), model.outline]) {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(mesh.positions, 3));
  geometry.setIndex(new BufferAttribute(mesh.indices, 1));
  scene.add(new Mesh(geometry, material));
}
const camera = new PerspectiveCamera(30, innerWidth / innerHeight, 10, 3000);
camera.position.set(-600, 120, 120);
camera.lookAt(0, 40, 100);
const renderer = new WebGLRenderer();
renderer.setSize(innerWidth, innerHeight);
document.body.append(renderer.domElement);
renderer.render(scene, camera);
renderer.getContext().finish();
document.body.dataset.ready = 'true';
