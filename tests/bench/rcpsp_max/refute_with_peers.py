#!/usr/bin/env python3
"""Whether a general-purpose constraint solver confirms a bound: refute_with_peers.py FOLDER SET/INSTANCE:N... [options]

For each instance it is asked for any schedule of at most N; where there is none, every schedule takes N + 1 or more. Without `:N`, for any
schedule at all. A schedule that is found is checked. See compare_peers.py for the folder and the peers.
"""
import argparse
import os
import sys

from compare_peers import add_peers, ask_peer, peers_of
from rcpsp_max_table import Instance, faults


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("folder")
    parser.add_argument("claims", nargs="+")
    add_peers(parser)
    parser.add_argument("--seconds", type=float, default=300, help="for each claim and solver [300]")
    options = parser.parse_args()
    print("instance,at_most,solver,answer,objective,seconds", flush=True)
    for claim in options.claims:
        name, _, bound = claim.partition(":")
        instance = Instance(os.path.join(options.folder, name + ".sch"))
        for peer, command in peers_of(options).items():
            status, objective, seconds, starts = ask_peer(command, instance, options.seconds, int(bound) if bound else None)
            answer = "none" if status == "infeasible" else "found" if starts else "unknown"
            if starts and faults(instance, [int(word) for word in starts.split()], objective):
                answer = "wrong schedule"
            print("%s,%s,%s,%s,%s,%.3f" % (name, bound, peer, answer, objective, seconds), flush=True)
    return 0


if __name__ == "__main__":
    sys.exit(main())
