"""Measures polygons with NumPy 1.24.2 and SciPy 1.10.1 (Debian 12) and writes shapes.csv; run beside this file.

The polygons are those of ShapesAgainstLibraryTest: so many corners at even angles, at distances from a formula.
"""
import numpy as np
from scipy.spatial import ConvexHull
from scipy.spatial.distance import pdist

lines = ["corners,area,perimeter,hull area,greatest,least,centroid x,centroid y"]
for corners in (5, 7, 11, 16, 23, 40, 90, 180):
    i = np.arange(corners)
    radius = 10 + 3 * np.sin(i * 2.399) + 2 * np.cos(i * i * 0.7)
    turn = 2 * np.pi * i / corners
    points = np.column_stack([radius * np.sin(turn), -radius * np.cos(turn)])
    nxt = np.roll(points, -1, axis=0)
    cross = points[:, 0] * nxt[:, 1] - nxt[:, 0] * points[:, 1]
    area = cross.sum() / 2
    centroid = ((points + nxt) * cross[:, None]).sum(axis=0) / (6 * area)
    hull = ConvexHull(points)
    normals = hull.equations[:, :2]
    widths = (points @ normals.T).max(axis=0) - (points @ normals.T).min(axis=0)
    perimeter = np.hypot(*(nxt - points).T).sum()
    values = [abs(area), perimeter, hull.volume, pdist(points).max(), widths.min(), *centroid]
    lines.append(",".join([str(corners)] + [f"{v:.9f}" for v in values]))
open("shapes.csv", "w").write("\n".join(lines) + "\n")
