#!/usr/bin/env python3
"""Whether a general-purpose constraint solver confirms a bound: refute_with_peers.py FOLDER SET/INSTANCE:N... [options]

For each instance it is asked for any schedule of at most N; where there is none, every schedule takes N + 1 or more. Without `:N`, for any
schedule at all. Of an instance with more than --whole activities it is asked about parts, with all lags between their activities: where a part
has no schedule, neither has the whole. The parts are, without N, what the lags tie together both ways, else sets of which no two can overlap.
See compare_peers.py for the folder and the peers.
"""
import argparse
import copy
import os
import sys

from compare_peers import add_peers, ask_peer, longest_paths, peers_of
from rcpsp_max_table import Instance, faults

UNRELATED = -10 ** 8  # a path below this is none


def part_of(instance, path, members):
    """The source, these activities and the sink, with the longest paths as their lags; and the paths."""
    kept = [0] + sorted(members) + [len(path) - 1]
    part = copy.copy(instance)
    part.durations = [instance.durations[i] for i in kept]
    part.demands = [instance.demands[i] for i in kept]
    paths = [[path[i][j] for j in kept] for i in kept]
    part.arcs = [(a, b, lag) for a, row in enumerate(paths) for b, lag in enumerate(row) if a != b and lag > UNRELATED]
    return part, paths


def tied_together(path):
    """Sets of activities that lags tie together both ways, the largest first."""
    left, found = set(range(1, len(path) - 1)), []
    while left:
        a = min(left)
        tied = {b for b in left if path[a][b] > UNRELATED and path[b][a] > UNRELATED}
        left -= tied
        found.append(tied)
    return sorted((tied for tied in found if len(tied) > 1), key=len, reverse=True)


def bits(numbers):
    return sum(1 << number for number in numbers)


def apart(instance, path, most):
    """Sets of activities of which no two can overlap in a schedule of at most so much, those that are shortest of room first."""
    size, last = instance.durations, len(path) - 1
    earliest = [max(0, path[0][i]) for i in range(last)]
    ends = [most - path[i][last] + size[i] for i in range(last)]
    real = [i for i in range(1, last) if size[i] > 0]
    clash = {i: bits(j for j in real if j != i and (path[i][j] >= size[i] or path[j][i] >= size[j] or any(
        a + b > c for a, b, c in zip(instance.demands[i], instance.demands[j], instance.capacities)))) for i in real}
    room = lambda members: max(ends[i] for i in members) - min(earliest[i] for i in members) - sum(size[i] for i in members)
    found = set()
    for seed in real:
        members, candidates = [seed], clash[seed]
        while candidates:
            best = max((i for i in real if candidates >> i & 1), key=lambda i: size[i] + (candidates & clash[i]).bit_count())
            members.append(best)
            candidates &= clash[best]
        found.add(tuple(sorted(members)))
    return sorted(found, key=room)


def parts(instance, path, most, options):
    if len(path) <= options.whole:
        return [(instance, path)]
    sets = tied_together(path) if most is None else apart(instance, path, most)
    return [part_of(instance, path, members) for members in sets[:options.parts]]


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("folder")
    parser.add_argument("claims", nargs="+")
    add_peers(parser)
    parser.add_argument("--seconds", type=float, default=300, help="for each question and solver [300]")
    parser.add_argument("--whole", type=int, default=220, help="activities up to which the whole is asked about [220]")
    parser.add_argument("--parts", type=int, default=10, help="to ask about, at most [10]")
    options = parser.parse_args()
    print("instance,at_most,activities,solver,answer,seconds", flush=True)
    for claim in options.claims:
        name, _, bound = claim.partition(":")
        instance, most = Instance(os.path.join(options.folder, name + ".sch")), int(bound) if bound else None
        path = longest_paths(instance)
        for peer, command in peers_of(options).items():
            for part, paths in parts(instance, path, most, options) if path else []:
                status, objective, seconds, starts = ask_peer(command, part, options.seconds, most, paths)
                wrong = starts and faults(part, [int(word) for word in starts.split()], objective)
                answer = "none" if status == "infeasible" else "wrong schedule" if wrong else "found" if starts else "unknown"
                print("%s,%s,%d,%s,%s,%.3f" % (name, bound, len(part.durations), peer, answer, seconds), flush=True)
                if answer == "none":
                    break
    return 0


if __name__ == "__main__":
    sys.exit(main())
