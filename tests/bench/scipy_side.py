"""The references by scipy, timed as the engine's routines are: asked in JSON, one a line, for so many runs on the input that the engine's side had;
answered with the processor's time in milliseconds and a result to compare by. Making the arrays and the grid's graph is not timed."""

import json
import sys
import time

import numpy
from scipy.optimize import linprog
from scipy.sparse import coo_array
from scipy.sparse.csgraph import dijkstra
from scipy.spatial import Delaunay

def plane(given):
    points, targets = numpy.array(given["points"]), numpy.array(given["targets"])
    rows = -numpy.column_stack([points, numpy.ones(len(points))])
    aim = numpy.array([*given["centroid"], 1.0])
    return lambda: linprog(aim, A_ub=rows, b_ub=-targets, bounds=(None, None), method="highs"), lambda found: found.fun


def triangles(given):
    points = numpy.array(given["points"])

    def perimeters(found):
        corners = points[found.simplices]
        return numpy.linalg.norm(corners - numpy.roll(corners, 1, axis=1), axis=2).sum()

    return lambda: Delaunay(points), perimeters


def grid(given, slanting):
    """The grid as a graph: each node tied to its four neighbours, or to eight."""
    across, up, step = given["across"], given["up"], given["step"]
    node = numpy.arange(across * up).reshape(up, across)
    ties = [(node[:, :-1], node[:, 1:], step), (node[:-1], node[1:], step)]
    if slanting:
        ties += [(node[:-1, :-1], node[1:, 1:], step * 2**0.5), (node[:-1, 1:], node[1:, :-1], step * 2**0.5)]
    one = numpy.concatenate([a.ravel() for a, _, _ in ties])
    other = numpy.concatenate([b.ravel() for _, b, _ in ties])
    lengths = numpy.concatenate([numpy.full(a.size, length) for a, _, length in ties])
    both = (numpy.concatenate([lengths, lengths]), (numpy.concatenate([one, other]), numpy.concatenate([other, one])))
    graph = coo_array(both, shape=(node.size, node.size)).tocsr()
    return lambda: dijkstra(graph, indices=given["from"]), lambda found: found.max()


SIDES = {
    "plane": plane,
    "triangles": triangles,
    "march": lambda given: grid(given, False),
    "march-slanting": lambda given: grid(given, True),
}


made = {}
for line in sys.stdin:
    asked = json.loads(line)
    name = asked["name"]
    if "input" in asked:
        made[name] = SIDES[name](asked["input"])
    run, result = made[name]
    before = time.process_time()
    for _ in range(asked["times"]):
        found = run()
    took = time.process_time() - before
    print(json.dumps({"ms": took * 1000, "result": float(result(found))}), flush=True)
