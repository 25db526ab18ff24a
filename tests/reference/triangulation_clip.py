"""Volumes of floors by scipy (Delaunay) and shapely (clipping). A list of floors in, JSON, each with points, heights, plane, outer, holes and
maybe triangles; volume, wet and dry area, least and greatest depth out."""

import json
import sys

import numpy
from scipy.spatial import ConvexHull, Delaunay
from shapely.geometry import Polygon


def wet_part(corners, depths):
    part = []
    for i in range(3):
        j = (i + 1) % 3
        if depths[i] >= 0:
            part.append(corners[i])
        if (depths[i] > 0 > depths[j]) or (depths[i] < 0 < depths[j]):
            part.append(corners[i] + (corners[j] - corners[i]) * depths[i] / (depths[i] - depths[j]))
    return Polygon(part) if len(part) >= 3 else Polygon()


def poured(floor):
    points = numpy.array(floor["points"])
    a, b, c = floor["plane"]
    depths = a * points[:, 0] + b * points[:, 1] + c - numpy.array(floor["heights"])
    outer = floor["outer"] or points[ConvexHull(points).vertices]
    room = Polygon(outer, floor["holes"] or [])
    triangles = floor["triangles"] or Delaunay(points).simplices
    volume = wet = dry = 0.0
    seen = []
    for triangle in triangles:
        corners, at = points[list(triangle)], depths[list(triangle)]
        facet = Polygon(corners).intersection(room)
        if facet.area == 0:
            continue
        # depth = slope · (p − first corner) + depth there
        slope = numpy.linalg.solve(corners[1:] - corners[0], at[1:] - at[0])
        depth_at = lambda p: float(slope @ (numpy.array(p) - corners[0]) + at[0])
        below = wet_part(corners, at).intersection(room)
        wet += below.area
        dry += facet.area - below.area
        if below.area > 0:
            volume += below.area * depth_at(below.centroid.coords[0])
        for piece in getattr(facet, "geoms", [facet]):
            if piece.geom_type == "Polygon":
                for ring in [piece.exterior, *piece.interiors]:
                    seen += [depth_at(p) for p in ring.coords]
    return {"volume": volume, "wet": wet, "dry": dry, "least": min(seen), "greatest": max(seen), "outer": [list(p) for p in outer]}


json.dump([poured(floor) for floor in json.load(sys.stdin)], sys.stdout)
