"""Drops thousands of small order files into a watched inbox and measures the watcher as it goes.

    mvn -q -B -Dfirst.use -DskipTests package
    python3 pipeline/checks/src/test/bench/soak.py --drops 10000 --wave 50

Waves of files land together; the next wave lands when the last one has been put away. After each wave the process's
memory (resident, in MB), open file handles and threads are read from /proc, and a line is printed now and then. Ends
with exit code 1 if a drop was not put away, or an order is not in the ledger exactly once.
"""

import argparse
import pathlib
import signal
import sqlite3
import statistics
import subprocess
import sys
import tempfile
import time

ROOT = pathlib.Path(__file__).resolve().parents[5]


def status(pid, key):
    for line in pathlib.Path(f"/proc/{pid}/status").read_text().splitlines():
        if line.startswith(key + ":"):
            return int(line.split()[1])
    raise KeyError(key)


def handles(pid):
    return len(list(pathlib.Path(f"/proc/{pid}/fd").iterdir()))


def main():
    say = argparse.ArgumentParser()
    say.add_argument("--drops", type=int, default=10_000)
    say.add_argument("--wave", type=int, default=50)
    say.add_argument("--minutes", type=float, default=1e9)
    say.add_argument("--classpath", default=":".join(
        str(ROOT / place) for place in ("pipeline/target/classes", "rules/target/classes", "pipeline/target/lib/*")))
    say.add_argument("--java", default="", help="more options of Java's, such as -Xmx96m")
    asked = say.parse_args()
    folder = pathlib.Path(tempfile.mkdtemp(prefix="soak-"))
    inbox, outbox = folder / "inbox", folder / "outbox"
    inbox.mkdir()
    # As pipeline/bandwright starts it.
    watcher = subprocess.Popen(
        ["java", "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xmn24m", "-Djava.awt.headless=true",
         *asked.java.split(), "-cp", asked.classpath, "bandwright.pipeline.cli.Main", "watch", str(inbox), "--out", str(outbox),
         "--artwork", str(ROOT / "inbox-sample/artwork"), "--poll", "1s", "--quiet", "0s"],
        stdout=open(folder / "log", "w"), stderr=subprocess.STDOUT)
    begun, dropped, seen = time.monotonic(), 0, []
    while dropped < asked.drops and time.monotonic() - begun < asked.minutes * 60:
        for _ in range(min(asked.wave, asked.drops - dropped)):
            dropped += 1
            (inbox / f"orders-{dropped}.csv").write_text(f"Order,SKU,Design,Qty\nS{dropped},COAST-S,lamp,1\n")
        while any(inbox.glob("*.csv")):
            if watcher.poll() is not None:
                sys.exit(f"the watcher ended by itself: {folder}/log")
            time.sleep(0.2)
        seen.append((dropped, status(watcher.pid, "VmRSS") / 1024, handles(watcher.pid), status(watcher.pid, "Threads")))
        if len(seen) % 10 == 1:
            print("%6d drops  %6.1f MB  %3d handles  %3d threads  %6.0f s" % (*seen[-1], time.monotonic() - begun), flush=True)
    peak = status(watcher.pid, "VmHWM") / 1024
    watcher.send_signal(signal.SIGTERM)
    code = watcher.wait()
    tenth = max(1, len(seen) // 10)
    for name, part in (("second tenth", seen[tenth:2 * tenth]), ("last tenth", seen[-tenth:])):
        if part:
            print("%-12s  %6.1f MB  %5.1f handles  %5.1f threads" % (
                name, *(statistics.mean(row[i] for row in part) for i in (1, 2, 3))))
    print("peak %.1f MB, %d drops, %d runs, %.0f s, exit code %d" % (
        peak, dropped, sum(1 for run in outbox.iterdir() if run.is_dir()), time.monotonic() - begun, code))
    put_away = sum(1 for _ in (inbox / "done").glob("*/*.csv"))
    made = sqlite3.connect(outbox / "ledger.db").execute(
        "SELECT COUNT(*), COUNT(DISTINCT order_no) FROM units").fetchone()
    print(f"{put_away} put away, {made[0]} pieces of {made[1]} orders made, in {folder}")
    sys.exit(0 if put_away == dropped and made == (dropped, dropped) and code == 0 else 1)


main()
