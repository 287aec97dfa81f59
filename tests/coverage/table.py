#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Adds up what gcov counted: a line is covered when any program ran it. table.py BUILD_FOLDER"""
import collections, json, os, subprocess, sys

folder = os.path.abspath(sys.argv[1])
top = os.getcwd()
counts = collections.defaultdict(dict)
notes = [os.path.join(d, f) for d, _, files in os.walk(folder) for f in files if f.endswith(".gcda")]
for begin in range(0, len(notes), 50):
    said = subprocess.run(["gcov", "--json-format", "--stdout", *notes[begin:begin + 50]], cwd=folder,
                          capture_output=True, text=True, check=True).stdout
    for line in said.splitlines():
        if not line.strip():
            continue
        for file in json.loads(line)["files"]:
            path = os.path.relpath(os.path.join(folder, file["file"]), top)
            if path.split("/")[0] not in ("core", "storage", "app"):
                continue
            for entry in file["lines"]:
                counts[path][entry["line_number"]] = max(entry["count"], counts[path].get(entry["line_number"], 0))

parts = collections.defaultdict(lambda: [0, 0])
for path, lines in counts.items():
    covered = sum(1 for c in lines.values() if c > 0)
    names = {path.split("/")[0]}
    if path.startswith("core/") and path.count("/") > 1:
        names.add("/".join(path.split("/")[:2]))
    for name in names:
        parts[name][0] += covered
        parts[name][1] += len(lines)

print("| part | lines | covered |\n|---|---|---|")
for name in sorted(parts):
    covered, total = parts[name]
    print(f"| {name} | {total} | {100 * covered / total:.1f} % |")
print("\nLeast covered files:")
worst = sorted(((sum(1 for c in l.values() if c > 0) / len(l), p) for p, l in counts.items() if len(l) > 10))[:12]
for share, path in worst:
    print(f"  {100 * share:5.1f} %  {path}")
