/** Loads the wasm simplifier when asked, and not before: the way bones are built. */
self.onmessage = async () => {
  const { MeshoptSimplifier } = await import('meshoptimizer');
  await MeshoptSimplifier.ready;
  // A flat 8 x 8 grid: it needs two triangles.
  const n = 9;
  const positions = new Float32Array(n * n * 3);
  for (let i = 0; i < n * n; i++) positions.set([i % n, Math.floor(i / n), 0], i * 3);
  const indices: number[] = [];
  for (let y = 0; y < n - 1; y++) {
    for (let x = 0; x < n - 1; x++) {
      const a = y * n + x;
      indices.push(a, a + 1, a + n, a + 1, a + n + 1, a + n);
    }
  }
  const [simple] = MeshoptSimplifier.simplify(new Uint32Array(indices), positions, 3, 6, 0.01);
  self.postMessage({ before: indices.length / 3, after: simple.length / 3 });
};
