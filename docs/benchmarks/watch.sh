#!/usr/bin/env bash
# How close the watch comes to what the wire can carry, and what 20 questions a second cost.
# usage: docs/benchmarks/watch.sh [PROFILE] [SECONDS]     (after: mvn -q -B -DskipTests package)
set -eu
cd "$(dirname "$0")/../.."
profile=${1:-demo-profiles/sandpiper.printer.json}
seconds=${2:-20}
java="java -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -jar target/gantrywright.jar"
work=$(mktemp -d)
trap 'kill $board 2>/dev/null || true; rm -rf "$work"' EXIT

baud=$(sed -n 's/.*"baud": *\([0-9]*\).*/\1/p' "$profile" | head -1)
$java practice "$profile" --listen 0 --paced > "$work/board" &
board=$!
for _ in $(seq 100); do grep -q rfc2217 "$work/board" && break; sleep 0.1; done
port=$(grep -o 'rfc2217://[0-9.:]*' "$work/board")

# One exchange on the wire: the question with its line end, each reply line with CR LF.
ends=$($java watch "$profile" --port practice: --rate 5 --for 1 --format csv | head -1 | cut -d, -f4-)
bytes=$(awk -v ends="$ends" 'BEGIN { n = split(ends, e, ","); b = 5 + 6;
  for (i = 1; i <= n; i++) b += length(e[i]) + 1 + length(" = clear") + 2; print b }')
limit=$(awk -v b="$bytes" -v baud="$baud" 'BEGIN { printf "%.2f", baud / 10 / b }')

# What the barest client reaches against the same peer: no watch can do better.
peer=$(java -XX:+UseSerialGC docs/benchmarks/PeerRate.java "${port##*:}" "$seconds")

$java watch "$profile" --port "$port" --rate 0 --for "$seconds" --format csv > "$work/csv"
awk -F, -v limit="$limit" -v peer="$peer" -v bytes="$bytes" -v baud="$baud" '
  NR > 20 && $3 == "live" { n++; lat[n] = $2; if (n == 1) first = $1; last = $1 }
  END { rate = (n - 1) / (last - first);
    printf "wire: %d baud, %d bytes an exchange, limit %.2f Hz\n", baud, bytes, limit;
    split(peer, p, " ");
    printf "peer: the barest client (one thread, one socket) gets %.2f Hz, %.1f %% of the limit; latency median %.3f ms, p99 %.3f ms\n", p[1], 100 * p[1] / limit, p[2], p[3];
    printf "watch: %.2f Hz, %.1f %% of the limit, %d samples\n", rate, 100 * rate / limit, n;
    for (i = 1; i <= n; i++) print lat[i] > "'"$work"'/lat" }' "$work/csv"
sort -n "$work/lat" | awk '{ v[NR] = $1 } END {
  printf "latency: median %.3f ms, p99 %.3f ms\n", v[int((NR + 1) / 2)], v[int(NR * 0.99)] }'

# The steady part only: start-up is not what 20 Hz costs.
$java watch "$profile" --port "$port" --rate 20 --for $((seconds + 10)) --format csv > "$work/csv20" &
watch=$!
sleep 6
ticks() { awk '{ print $14 + $15 }' "/proc/$watch/stat"; }
before=$(ticks); start=$(date +%s.%N)
sleep "$seconds"
after=$(ticks); end=$(date +%s.%N)
awk -v t=$((after - before)) -v hz="$(getconf CLK_TCK)" -v s="$start" -v e="$end" 'BEGIN {
  printf "20 Hz: %.2f %% of one core\n", 100 * t / hz / (e - s) }'
wait $watch || true
