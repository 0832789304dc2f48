#!/usr/bin/env python3
"""The table of a run of solve_rcpsp_max: rcpsp_max_table.py FOLDER RESULT.csv...

FOLDER holds the sets (FOLDER/<set>/<instance>.sch) and best_known.csv. Every schedule is judged here, with a reader and a checker that share
nothing with the program. Exit status 1 where a schedule is wrong or a claim contradicts the best-known values.
"""
import csv
import os
import re
import statistics
import sys


class Instance:
    """Activities 0..n+1: durations, demands; arcs (i, j, lag): start(j) - start(i) >= lag."""

    def __init__(self, path):
        with open(path, encoding="latin-1") as file:
            text = file.read()
        self.read_sm(text) if path.endswith(".sm") else self.read_sch(text)

    def read_sch(self, text):
        rows = [line.split() for line in text.splitlines() if line.strip()]
        count = int(rows[0][0]) + 2
        self.arcs = []
        for row in rows[1:1 + count]:
            successors = int(row[2])
            lags = [int(word.strip("[]")) for word in row[3 + successors:]]
            self.arcs += [(int(row[0]), int(j), lag) for j, lag in zip(row[3:3 + successors], lags, strict=True)]
        modes = [[int(word) for word in row] for row in rows[1 + count:1 + 2 * count]]
        self.durations, self.demands = [row[2] for row in modes], [row[3:] for row in modes]
        self.capacities = [int(word) for word in rows[1 + 2 * count]] if len(rows) > 1 + 2 * count else []

    def read_sm(self, text):
        parts = re.split(r"^\*+$", text, flags=re.M)
        named = {part.split(None, 1)[0]: part.splitlines() for part in parts if part.strip()}
        jobs = [[int(word) for word in line.split()] for line in named["REQUESTS/DURATIONS:"] if line.strip()[:1].isdigit()]
        self.durations, self.demands = [row[2] for row in jobs], [row[3:] for row in jobs]
        self.arcs = []
        for line in named["PRECEDENCE"]:
            if line.strip()[:1].isdigit():
                row = [int(word) for word in line.split()]
                self.arcs += [(row[0] - 1, j - 1, self.durations[row[0] - 1]) for j in row[3:3 + row[2]]]
        self.capacities = [int(word) for line in named["RESOURCEAVAILABILITIES:"] if line.strip()[:1].isdigit() for word in line.split()]


def faults(instance, starts, objective):
    if len(starts) != len(instance.durations):
        return ["%d starts" % len(starts)]
    found = ["a start before 0"] if min(starts) < 0 or starts[0] != 0 else []
    found += ["lag %d -> %d" % (i, j) for i, j, lag in instance.arcs if starts[j] - starts[i] < lag]
    if starts[-1] != objective:
        found.append("the objective is not the last start")
    for resource, capacity in enumerate(instance.capacities):
        change = {}
        for start, duration, demand in zip(starts, instance.durations, instance.demands):
            change[start] = change.get(start, 0) + demand[resource]
            change[start + duration] = change.get(start + duration, 0) - demand[resource]
        use = 0
        for time in sorted(change):
            use += change[time]
            if use > capacity:
                found.append("resource %d at %d" % (resource, time))
    return found


def contradiction(row, known):
    """What the best-known values say against a claim."""
    low, high = (int(known[key]) if known[key] else None for key in ("lb", "ub"))
    if row["status"] == "infeasible":
        return "proven infeasible, but it has a schedule" if high is not None else None
    if row["objective"] and known["status"] == "infeasible":
        return "a schedule, but it is proven infeasible"
    if row["objective"] and low is not None and int(row["objective"]) < low:
        return "below the proven bound"
    if row["bound"] and high is not None and int(row["bound"]) > high:
        return "bound above a known schedule"
    return None


def main(arguments):
    if len(arguments) < 2:
        sys.exit(__doc__)
    folder = arguments[0]
    with open(os.path.join(folder, "best_known.csv"), newline="") as file:
        best = {row["file"]: row for row in csv.DictReader(file)}
    sets, wrong = {}, 0
    for path in arguments[1:]:
        with open(path, newline="") as file:
            for row in csv.DictReader(file):
                name = "/".join(row["instance"].split("/")[-2:])
                complaints = [contradiction(row, best[name])]
                if row["starts"]:
                    starts = [int(word) for word in row["starts"].split()]
                    complaints += faults(Instance(os.path.join(folder, name)), starts, int(row["objective"]))
                for complaint in filter(None, complaints):
                    print("%s: %s" % (name, complaint))
                    wrong += 1
                sets.setdefault(name.split("/")[0], []).append((row, best[name]))
    print("| set | instances | schedules | feasible, none found | optimal proven | infeasible proven | at best known | better | mean gap | median seconds |")
    print("|---|---|---|---|---|---|---|---|---|---|")
    for name, rows in sets.items():
        found = [(int(row["objective"]), int(known["ub"])) for row, known in rows if row["objective"] and known["ub"]]
        gaps = [(value - bound) / bound for value, bound in found]
        status = [row["status"] for row, _ in rows]
        missed = sum(1 for row, known in rows if not row["objective"] and known["ub"])
        print("| %s | %d | %d | %d | %d | %d | %d | %d | %s | %.2f |" % (
            name, len(rows), sum(1 for row, _ in rows if row["objective"]), missed, status.count("optimal"), status.count("infeasible"),
            sum(gap <= 0 for gap in gaps), sum(gap < 0 for gap in gaps), "%.2f %%" % (100 * statistics.mean(gaps)) if gaps else "-",
            statistics.median(float(row["seconds"]) for row, _ in rows)))
    print("every schedule checked; %d complaints" % wrong)
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
