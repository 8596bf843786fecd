#!/usr/bin/env bash
# Runs every speed figure, each beside its peers in the same call, and writes them with the machine
# named. On a machine with nothing else to do; needs avr-libc and universal-ctags for the first.
# usage: docs/benchmarks/all.sh [RESULTS.md]        (about half an hour)
set -eu
cd "$(dirname "$0")/../.."
results=${1:-docs/benchmarks/results.md}
mvn -q -B -DskipTests package
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

section() { # title, goal, command …
  local title=$1 goal=$2
  shift 2
  echo "== $title" >&2
  {
    printf '\n## %s\n\nGoal: %s\n\n`%s`\n\n```\n' "$title" "$goal" "$*"
    { timeout 900 "$@" 2>/dev/null || echo "(ended with status $?)"; } | sed 's/\x1b\[[0-9;]*m//g'
    printf '```\n'
  } >>"$work/results"
  # What is done stays, should somebody end it here.
  cp "$work/results" "$results"
}

{
  printf '# Figures\n\nMade by `docs/benchmarks/all.sh`; what it printed.\n\n'
  printf '%s, %s cores, %s MiB of memory, Linux %s, Java %s, load %s, %s\n' \
    "$(sed -n 's/^model name[^:]*: //p' /proc/cpuinfo | head -1)" "$(nproc)" \
    "$(awk '/MemTotal/ { print int($2 / 1024) }' /proc/meminfo)" "$(uname -r)" \
    "$(java -XshowSettings:properties -version 2>&1 | sed -n 's/.*java.version = //p')" \
    "$(cut -d' ' -f1 /proc/loadavg)" "$(date -u +%F)"
} >"$work/results"

section "Macros of 267 device headers" "no longer than ctags, start of the virtual machine included" \
  bash docs/benchmarks/macros.sh 7
section "Learning 10,000 settings" "under one second, warm" \
  mvn -q test-compile exec:java -Dexec.classpathScope=test -Dexec.mainClass=dev.gantrywright.names.LearningBench
section "Watch on the wire" "90 % of the wire's limit; under 5 % of a core at 20 Hz" \
  bash docs/benchmarks/watch.sh
section "Two hundred boards" "every failing one named" bash docs/benchmarks/many-boards.sh 200 64
section "Many profiles" "10,000 profiles in 5 s on 2 cores, growth linear, memory bounded" \
  bash docs/benchmarks/rules.sh many
section "What the header engine keeps" "no more than 4 times the bytes read" \
  bash docs/benchmarks/header.sh memory
section "The window" "keystroke to findings and plan p99 16 ms; no pulse over 16 ms; first window within 1.5 of a bare one" \
  bash docs/benchmarks/window.sh
section "Header engine, in process" "scan 100 MB/s a core; 10,000 settings evaluated again under 5 ms" \
  bash docs/benchmarks/header.sh jmh
section "Rule book" "whole book under 2 ms, after one edit under 0.5 ms" bash docs/benchmarks/rules.sh jmh
section "Header fuzz" "no exception" bash docs/benchmarks/header.sh fuzz 20000 1
section "Header growth" "linear time: the figures of a row are alike or fall" bash docs/benchmarks/header.sh growth
echo "$results"
