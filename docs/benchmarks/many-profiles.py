#!/usr/bin/env python3
"""Writes N printer profiles beside one board sheet: many-profiles.py N DIR [alike|varied]

alike: one model of printer, each with figures of its own in three fields.
varied: every number of every profile is its own, within 30 % of the demo printer's.
"""
import copy, json, pathlib, random, sys

count, out = int(sys.argv[1]), pathlib.Path(sys.argv[2])
varied = len(sys.argv) > 3 and sys.argv[3] == "varied"
out.mkdir(parents=True, exist_ok=True)
demo = pathlib.Path("demo-profiles")
(out / "fulmar-m4.board.json").write_text((demo / "fulmar-m4.board.json").read_text())
base = json.loads((demo / "sandpiper.printer.json").read_text())
base["build"] = {}
dice = random.Random(7)


def vary(value, key=""):
    if isinstance(value, dict):
        return {k: v if k == "format" else vary(v, k) for k, v in value.items()}
    if isinstance(value, bool):
        return dice.random() < 0.5
    if isinstance(value, int) and key not in ("port", "secondPort", "dataBits", "address", "microsteps"):
        return int(value * dice.uniform(0.7, 1.3))
    if isinstance(value, float):
        return round(value * dice.uniform(0.7, 1.3), 4)
    return value


for number in range(count):
    profile = vary(copy.deepcopy(base)) if varied else base
    profile["name"] = f"Sandpiper {number}"
    profile["axes"]["x"]["stepsPerMm"] = dice.choice([80, 80, 80, 160, 100])
    profile["serial"]["baud"] = dice.choice([115200, 250000, 500000])
    profile["axes"]["z"]["travelMax"] = dice.randrange(200, 300)
    (out / f"{number:05}.printer.json").write_text(json.dumps(profile, indent=2))
