/** Radius of the bare tree at the height y, metres: a cone from the lowest branches to the tip. */
export function radiusAt(tree, y) {
  return tree.widestRadius * Math.max(0, Math.min(1, (tree.height - y) / (tree.height - tree.lowestBranch)));
}
