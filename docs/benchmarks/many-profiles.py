#!/usr/bin/env python3
"""Writes N printer profiles beside one board sheet, each with figures of its own."""
import json, pathlib, random, sys

count, out = int(sys.argv[1]), pathlib.Path(sys.argv[2])
out.mkdir(parents=True, exist_ok=True)
demo = pathlib.Path("demo-profiles")
(out / "fulmar-m4.board.json").write_text((demo / "fulmar-m4.board.json").read_text())
base = json.loads((demo / "sandpiper.printer.json").read_text())
base["build"] = {}
dice = random.Random(7)
for number in range(count):
    base["name"] = f"Sandpiper {number}"
    base["axes"]["x"]["stepsPerMm"] = dice.choice([80, 80, 80, 160, 100])
    base["serial"]["baud"] = dice.choice([115200, 250000, 500000])
    base["axes"]["z"]["travelMax"] = dice.randrange(200, 300)
    (out / f"{number:05}.printer.json").write_text(json.dumps(base, indent=2))
