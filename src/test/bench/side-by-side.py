"""Runs programs one after the other, again and again, and prints the medians of what each run took.

Usage: python3 side-by-side.py ROUNDS FILE, where each line of FILE is "name | command". A folder "profile" is taken
away before each run. The clock, the processor seconds of the program and of all that it started (Linux only, and from
the system's own account), and the memory of the largest of these processes.
"""
import ctypes
import json
import os
import resource
import shutil
import statistics
import subprocess
import sys
import time

SUBREAPER = 36


def one(command):
    """In a process of its own, so that the system's account holds this run and nothing else."""
    out, into = os.pipe()
    if os.fork() == 0:
        ctypes.CDLL(None).prctl(SUBREAPER, 1, 0, 0, 0)
        start = time.monotonic()
        code = subprocess.call(command, shell=True, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        wall = time.monotonic() - start
        try:
            while True:
                os.wait()
        except ChildProcessError:
            pass
        used = resource.getrusage(resource.RUSAGE_CHILDREN)
        os.write(into, json.dumps([code, wall, used.ru_utime + used.ru_stime, used.ru_maxrss / 1024]).encode())
        os._exit(0)
    os.close(into)
    os.wait()
    return json.loads(os.read(out, 1000))


def main(rounds, file):
    with open(file, encoding="utf-8") as lines:
        programs = [[part.strip() for part in line.split("|", 1)] for line in lines if line.strip()]
    taken = {name: [] for name, _ in programs}
    for _ in range(int(rounds)):
        for name, command in programs:
            shutil.rmtree("profile", ignore_errors=True)
            code, *figures = one(command)
            if code != 0:
                sys.exit(f"{name} ended with {code}: {command}")
            taken[name].append(figures)
    for name, runs in taken.items():
        wall, processor, memory = ([run[i] for run in runs] for i in range(3))
        print(f"{name:34s} clock {statistics.median(wall):6.2f} s (least {min(wall):.2f})   "
              f"processor {statistics.median(processor):6.2f} s   memory {statistics.median(memory):5.0f} MB")


main(*sys.argv[1:])
