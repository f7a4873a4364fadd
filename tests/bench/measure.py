"""Runs a command without its output, and prints the seconds of user and system time that it took and its largest resident
set in kilobytes. A script of its own, and one that imports next to nothing: a forked process begins as large as its parent.

    python3 -I -S tests/bench/measure.py COMMAND…
"""

import os
import resource
import sys

MOST_SECONDS = 1200  # or what does not end would hold up all the rest

child = os.fork()
if child == 0:
    try:
        resource.setrlimit(resource.RLIMIT_CPU, (MOST_SECONDS, MOST_SECONDS))
        os.dup2(os.open(os.devnull, os.O_WRONLY), 1)
        os.execv(sys.argv[1], sys.argv[1:])
    finally:
        os._exit(127)
_, status, used = os.wait4(child, 0)
print(used.ru_utime + used.ru_stime, used.ru_maxrss)
sys.exit(status != 0)
