#!/usr/bin/env python3
"""solve_rcpsp_max and general-purpose constraint solvers side by side, one thread each, on the same instances in the same run.

compare_peers.py FOLDER SET... [options] > rows.csv     runs them; the table goes to standard error
compare_peers.py --table rows.csv...                    the table of rows from earlier

FOLDER holds the sets (FOLDER/<set>/<instance>.sch) and best_known.csv, as for rcpsp_max_table.py. The peers solve rcpsp_max.mzn: Gecode through
the command `minizinc`, Chuffed through the npm package's WebAssembly build under node, which is slower than machine code (--wasm its folder dist/).
Theirs is the search alone (solveTime), without flattening and setting up the model; ours is the whole call. Every schedule is checked, every claim held
against the best-known values.
"""
import argparse
import collections
import csv
import os
import re
import statistics
import subprocess
import sys
import tempfile

from rcpsp_max_table import Instance, contradiction, faults

HERE = os.path.dirname(os.path.abspath(__file__))
Row = collections.namedtuple("Row", "solver set instance status objective seconds starts")


def longest_paths(instance):
    """path[i][j]: start(j) - start(i) is at least so much; None where a cycle is impossible."""
    count, least = len(instance.durations), -10 ** 9
    path = [[0 if i == j else least for j in range(count)] for i in range(count)]
    for i, j, lag in instance.arcs:
        path[i][j] = max(path[i][j], lag)
    for j in range(1, count - 1):  # the source comes first, the sink last
        path[0][j] = max(path[0][j], 0)
        path[j][-1] = max(path[j][-1], instance.durations[j])
    for k in range(count):
        through = path[k]
        for row in path:
            if row[k] > least:
                row[:] = [max(value, row[k] + more) for value, more in zip(row, through)]
    return None if any(path[i][i] > 0 for i in range(count)) else path


def clashing_pairs(instance, path):
    """Pairs that some resource keeps apart, in an order that the lags leave open."""
    size = instance.durations
    for i in range(len(size)):
        for j in range(i):
            both = size[i] > 0 and size[j] > 0 and any(a + b > c for a, b, c in zip(instance.demands[i], instance.demands[j], instance.capacities))
            if both and path[i][j] < size[i] and path[j][i] < size[j]:
                yield i, j


def data_of(instance, path, horizon=None):
    """The instance for rcpsp_max.mzn. A schedule, if there is any, ends by the sum of all durations and lags; a shorter horizon can be asked for."""
    count = len(instance.durations)
    if horizon is None:
        horizon = sum(max([instance.durations[i]] + [lag for j, _, lag in instance.arcs if j == i]) for i in range(count))
    earliest = [max(0, path[0][i]) for i in range(count)]
    latest = [0] + [min(horizon - max(0, path[i][-1]), -path[i][0] if path[i][0] > -10 ** 8 else horizon) for i in range(1, count)]
    pairs = list(clashing_pairs(instance, path))
    grid = lambda rows: "[|" + "|".join(",".join(map(str, row)) for row in rows) + "|]"
    demands = [[row[r] for row in instance.demands] for r in range(len(instance.capacities))]
    lines = {"n": count, "resources": len(instance.capacities), "horizon": horizon, "duration": instance.durations, "demand": grid(demands),
             "capacity": instance.capacities, "lags": len(instance.arcs), "lag": grid([(i + 1, lag, j + 1) for i, j, lag in instance.arcs]),
             "pairs": len(pairs), "pair": grid([(i + 1, j + 1) for i, j in pairs]) if pairs else "array2d(1..0, 1..2, [])",
             "earliest": earliest, "latest": latest}
    return "".join("%s = %s;\n" % line for line in lines.items())


def ask_peer(command, instance, limit, horizon=None, path=None):
    """Status, objective, seconds and starts."""
    path = path or longest_paths(instance)
    if path is None or (horizon is not None and path[0][-1] > horizon):
        return "infeasible", "", 0.0, ""
    with tempfile.TemporaryDirectory() as folder:
        data = os.path.join(folder, "instance.dzn")
        with open(data, "w") as file:
            file.write(data_of(instance, path, horizon))
        words = command + ["--statistics", "--solver-time-limit", str(int(1000 * limit)), os.path.join(HERE, "rcpsp_max.mzn"), data]
        try:
            text = subprocess.run(words, capture_output=True, text=True, timeout=3 * limit + 120).stdout
        except subprocess.TimeoutExpired:
            return "unknown", "", limit, ""
    found = re.findall(r"^starts \[(.*)\]$", text, flags=re.M)
    starts = [int(word) for word in found[-1].split(",")] if found else []
    times = [float(value) for value in re.findall(r"%%%mzn-stat: solveTime=([0-9.eE+-]+)", text)]
    complete = "==========" in text
    status = "infeasible" if "=====UNSATISFIABLE=====" in text else "optimal" if complete and starts else "feasible" if starts else "unknown"
    return status, starts[-1] if starts else "", sum(times) if times else limit, " ".join(map(str, starts))


def ask_ours(program, file, limit):
    text = subprocess.run([program, "--seconds", str(limit), file], capture_output=True, text=True, check=True).stdout
    row = next(csv.DictReader(text.splitlines()))
    return row["status"], row["objective"], float(row["seconds"]), row["starts"]


def complaints(row, known, instance):
    claim = {"status": row.status, "objective": str(row.objective), "bound": str(row.objective) if row.status == "optimal" else ""}
    found = [contradiction(claim, known)] if known else []
    if row.starts:
        found += faults(instance, [int(word) for word in row.starts.split()], int(row.objective))
    return ["%s, %s/%s: %s" % (row.solver, row.set, row.instance, complaint) for complaint in found if complaint]


def peers_of(options):
    peers = {"gecode": ["minizinc", "--solver", "gecode"]} if options.gecode else {}
    if options.wasm:
        peers["chuffed"] = ["node", os.path.join(HERE, "minizinc_wasm.cjs"), options.wasm, "--solver", "chuffed", "-f"]
    return peers


def add_peers(parser):
    parser.add_argument("--gecode", action="store_true", help="the command minizinc with Gecode")
    parser.add_argument("--wasm", help="the folder dist/ of the npm package minizinc, for Chuffed")


def run(options):
    with open(os.path.join(options.folder, "best_known.csv"), newline="") as file:
        best = {row["file"]: row for row in csv.DictReader(file)}
    peers = peers_of(options)
    rows, wrong = [], []
    print(",".join(Row._fields), flush=True)
    for name in options.sets:
        files = sorted(file for file in os.listdir(os.path.join(options.folder, name)) if file.endswith(".sch"))
        for file in files[::options.every]:
            if options.only and "%s/%s" % (name, file[:-4]) not in options.only:
                continue
            place = os.path.join(options.folder, name, file)
            instance = Instance(place)
            answers = {"ours": ask_ours(options.ours, place, options.seconds)} if options.ours else {}
            for peer, command in peers.items():
                answers[peer] = ask_peer(command, instance, options.seconds)
            for solver, answer in answers.items():
                rows.append(Row(solver, name, file[:-4], *answer))
                wrong += complaints(rows[-1], best.get("%s/%s" % (name, file)), instance)
                print(",".join(map(str, rows[-1])), flush=True)
    return rows, wrong


def table(rows, out):
    """Per set: proven by each within the limit; and for each other solver the median times over the instances that the first one and it prove."""
    proofs = {}
    for row in rows:
        by_instance = proofs.setdefault(row.set, {}).setdefault(row.instance, {})
        by_instance[row.solver] = float(row.seconds) if row.status in ("optimal", "infeasible") else None
    solvers = list(dict.fromkeys(row.solver for row in rows))
    first, others = solvers[0], solvers[1:]
    heads = ["set", "instances"] + ["%s proves" % s for s in solvers] + ["both: %s / %s, median s (instances)" % (first, s) for s in others]
    print("| %s |\n%s|" % (" | ".join(heads), "|---" * len(heads)), file=out)
    for name, instances in proofs.items():
        cells = [name, len(instances)] + [sum(times.get(s) is not None for times in instances.values()) for s in solvers]
        for s in others:
            both = [(t[first], t[s]) for t in instances.values() if t.get(first) is not None and t.get(s) is not None]
            medians = tuple(statistics.median(column) for column in zip(*both))
            cells.append("%.3f / %.3f (%d)" % (*medians, len(both)) if both else "-")
        print("| %s |" % " | ".join(map(str, cells)), file=out)


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("folder", nargs="?")
    parser.add_argument("sets", nargs="*")
    parser.add_argument("--ours", help="the program solve_rcpsp_max")
    add_peers(parser)
    parser.add_argument("--seconds", type=float, default=10, help="for each instance and solver [10]")
    parser.add_argument("--every", type=int, default=4, help="of a set's instances, one in so many [4]")
    parser.add_argument("--only", nargs="*", help="SET/INSTANCE: none but these")
    parser.add_argument("--table", nargs="+", help="rows from earlier")
    options = parser.parse_args()
    wrong = []
    if options.table:
        rows = []
        for path in options.table:
            with open(path, newline="") as file:
                rows += [Row(*line) for line in list(csv.reader(file))[1:]]
    elif options.folder and options.sets:
        rows, wrong = run(options)
    else:
        parser.error("a folder and sets, or --table")
    table(rows, sys.stdout if options.table else sys.stderr)
    for complaint in wrong:
        print(complaint, file=sys.stderr)
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
