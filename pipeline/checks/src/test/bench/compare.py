#!/usr/bin/python3
"""Times Bandwright against the plain script, in turn, on a made shop, and prints medians and their ratios.

usage: compare.py [--lines N] [--art M] [--pairs P] [--all-kinds]
Needs python3-openpyxl, python3-pil, python3-reportlab and python3-numpy. Without --all-kinds the made shop is turned
into one that both print whole: no cones and no CMYK pictures. Times and memory are the system's own
figures of the finished process (wait4); a first run of each is not counted.
"""
import argparse, csv, json, os, pathlib, statistics, subprocess, sys, tempfile, time
from PIL import Image

HERE = pathlib.Path(__file__).resolve().parent
ROOT = HERE.parents[4]


def rewrite(table, change):
    with open(table, newline="", encoding="utf-8") as f:
        rows = list(csv.DictReader(f))
        names = list(rows[0]) if rows else None
    if names is None:
        return
    rows = [change(row) for row in rows]
    with open(table, "w", newline="", encoding="utf-8") as f:
        out = csv.DictWriter(f, names)
        out.writeheader()
        out.writerows(row for row in rows if row)


def make_plain(shop):
    """Keeps what both sides print whole."""
    art = shop / "inbox" / "artwork"
    fine = [p.name for p in sorted(art.glob("*.jpg")) if Image.open(p).mode == "RGB"]
    odd = {p.name for p in art.glob("*.jpg")} - set(fine)

    def blank(row):
        if row["shape"] == "cone":
            row.update(shape="cylinder", bottom_diameter="")
        return row

    def design(row):
        row.update(artwork_2="")
        row["artwork"] = fine[0] if row["artwork"] in odd else row["artwork"]
        return row

    rewrite(shop / "rules" / "blanks.csv", blank)
    rewrite(shop / "rules" / "designs.csv", design)


def timed(command):
    start = time.monotonic()
    child = subprocess.Popen(command, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    _, status, used = os.wait4(child.pid, 0)
    wall = time.monotonic() - start
    code = os.waitstatus_to_exitcode(status)
    if code not in (0, 3):
        sys.exit(f"{command[0]} ended with {code}")
    return {"wall": wall, "cpu": used.ru_utime + used.ru_stime, "peak": used.ru_maxrss / 1024}


def main():
    asked = argparse.ArgumentParser()
    asked.add_argument("--lines", type=int, default=400)
    asked.add_argument("--art", type=int, default=60)
    asked.add_argument("--pairs", type=int, default=5)
    asked.add_argument("--all-kinds", action="store_true")
    asked = asked.parse_args()
    with tempfile.TemporaryDirectory() as folder:
        folder = pathlib.Path(folder)
        shop = folder / "shop"
        subprocess.run(
            [sys.executable, HERE / "made_shop.py", shop, "--lines", str(asked.lines), "--art", str(asked.art)],
            check=True,
        )
        if not asked.all_kinds:
            make_plain(shop)
        tool = [ROOT / "pipeline" / "bandwright", "run", shop / "inbox", "--rules", shop / "rules", "--date", "2026-03-02"]
        figures = {"bandwright": [], "script": []}
        for pair in range(asked.pairs + 1):
            outbox = folder / f"outbox-{pair}"
            ours = timed([*tool, "--out", outbox])
            theirs = timed([sys.executable, HERE / "plain_script.py", shop, folder / f"script-{pair}"])
            if pair:
                figures["bandwright"].append(ours)
                figures["script"].append(theirs)
        report(asked, figures, shop, outbox)


def report(asked, figures, shop, outbox):
    print(f"{asked.lines} lines, {asked.art} pictures, {asked.pairs} pairs, {os.cpu_count()} cores")
    for name, runs in figures.items():
        middle = {key: statistics.median(run[key] for run in runs) for key in runs[0]}
        print(f"{name:11} wall {middle['wall']:6.2f} s  cpu {middle['cpu']:6.2f} s  peak {middle['peak']:5.0f} MB")
    for key in ("wall", "cpu"):
        ratio = statistics.median(a[key] / b[key] for a, b in zip(figures["bandwright"], figures["script"]))
        print(f"{key} ratio, pair by pair: {ratio:.2f}")
    run = next(outbox.glob("2026-*"))
    said = json.loads((run / "run.json").read_text(encoding="utf-8"))
    sheets = sum(f.stat().st_size for f in (run / "sheets").iterdir())
    pictures = sum(f.stat().st_size for f in (shop / "inbox" / "artwork").iterdir())
    print(f"{len(said['sheets'])} sheets, at least {said['sheets_at_least']}; {len(said['units'])} pieces")
    print(f"sheets {sheets / 1e6:.1f} MB, all pictures {pictures / 1e6:.1f} MB")


if __name__ == "__main__":
    main()
