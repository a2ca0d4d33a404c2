#!/bin/sh
# The page of the benchmarks from what was measured: page.sh RESULTS CORE
set -eu
results=$1
core=$2
here=$(dirname "$0")

value() { awk -F '\t' -v key="$1" '$1 == key { found = $2 } END { print found == "" ? "-" : found }' "$results"; }
# reached VALUE LIMIT: whether the value is at most the limit
reached() { awk -v a="$1" -v b="$2" 'BEGIN { print a == "-" ? "not measured" : a + 0 <= b + 0 ? "reached" : "**not reached**" }'; }
least() { awk -v a="$1" -v b="$2" 'BEGIN { print (a == "-" ? "not measured" : a + 0 >= b + 0 ? "reached" : "**not reached**") }'; }
row() { printf '| %s | %s | %s | %s | %s | %s |\n' "$@"; }
# The greatest of some values.
greatest() { for key in "$@"; do value "$key"; done | sort -g | tail -n 1; }

within=$(awk -F '\t' '$4 <= 1.01 { n++ } END { print n + 0 }' "$core")
functions=$(wc -l < "$core")
middle=$(cut -f 4 "$core" | sort -g | awk '{ a[NR] = $1 } END { print a[int((NR + 1) / 2)] }')
function_ratio=$(value function.ratio)
route=$(greatest route.4.ratio route.40.ratio route.400.ratio route.4000.ratio)
takeoff_linear=$(greatest takeoff.100000.fill.linear takeoff.100000.recalc.linear takeoff.100000.save.linear takeoff.100000.load.linear)

cat << TEXT
# Speed

Made by \`sh tests/bench.sh\` (\`--build\` for the last two rows) on $(date -u +%Y-%m-%d), on $(nproc) processors of
$(sed -n 's/^model name[^:]*: //p' /proc/cpuinfo | head -n 1), $(soffice --version 2> /dev/null | head -n 1 | cut -d ' ' -f 1,2), $(c++ --version | head -n 1).
Others work on this machine too: a ratio is the median of runs that take turns, A B A B; a time is only what was seen here.

| # | measure | how | target | result | |
|---|---|---|---|---|---|
TEXT
row 1 "typed core against the same formula on plain doubles" "callgrind, instructions a call, -O2, $functions functions written twice with the same checks" "at most 1.01 for at least 10" "$within of $functions at most 1.01, median $middle (below)" "$(least "$within" 10)"
row 2 "\`UC.LINER.MASS\`, three value-unit pairs and a unit cell, 100,000 cells" "full recalculation against an add-in function of the same arguments that does nothing, same office, 11 pairs" "at most 1.3" "$function_ratio ($(value function.ours.s) s and $(value function.nothing.s) s)" "$(reached "$function_ratio" 1.3)"
row 3a "the same formula as a Basic user function" "10,000 cells of each, 7 pairs" "ours 10 times faster" "$(value basic.ratio) times" "$(least "$(value basic.ratio)" 10)"
row 3b "the same formula as a Python add-in function" "the same" "ours 30 times faster" "$(value python.ratio) times; one that does nothing $(value python.nothing.ratio) times" "$(least "$(value python.ratio)" 30)"
row 3c "the same, its units and dimensions left to Pint, a library for them" "the same; each unit's text is read once only" "-" "$(value checked.ratio) times" "-"
row 4a "\`UC.ROUTE.POOL\` in the core, 1,000 to 1,000,000 steps" "against a loop by hand on plain doubles that makes the same rows; pairs" "at most 1.5" "$(value route.4.ratio), $(value route.40.ratio), $(value route.400.ratio), $(value route.4000.ratio) at 1e3, 1e4, 1e5, 1e6" "$(reached "$route" 1.5)"
row 4b "the same, linear in its steps" "callgrind, instructions a step at 1e3, 1e4, 1e5, 1e6; times are noisier" "linear (last at most 1.1 of first)" "$(value route.1e3.instructions), $(value route.1e4.instructions), $(value route.1e5.instructions), $(value route.1e6.instructions)" "$(reached "$(value route.1e6.instructions)" "$(value route.1e3.instructions | awk '{ print $1 * 1.1 }')")"
row 4c "\`UC.BED.OPTIONS\` in the core, $(value options.candidates) beds of two kinds of unit, of which $(value options.passed) pass" "processor time of one core, the storage wanted given; 7 runs" "below 10 s" "$(value options.s) s, $(value options.each.us) us a bed and $(value options.allocations) allocations; without bounds $(value options.all.s) s" "$(reached "$(value options.s)" 10)"
row 4d "a store of rain balanced over 36,525 days in the core" "time, median of 51: its totals (\`UC.REUSE.YIELD\`), and a row a day (\`UC.REUSE.BALANCE\`)" "at most 10 ms" "$(value reuse.yield.ms) ms and $(value reuse.rows.ms) ms" "$(reached "$(greatest reuse.yield.ms reuse.rows.ms)" 10)"
row 4e "\`UC.ROUTE.GOVERNING\` in the core, a rain table of 10 rows, a rating of 150" "time, median of 51: block storms, and alternating blocks of 5 min to 24 h" "at most 10 ms" "$(value governing.block.ms) ms and $(value governing.alternating.ms) ms" "$(reached "$(greatest governing.block.ms governing.alternating.ms)" 10)"
row 5a "unit text to unit, seen before" "14 unit texts; allocations counted" "below 50 ns, none" "$(value unit.hot.ns) ns, $(value unit.hot.allocations) allocations (quantity text $(value quantity.hot.ns) ns)" "$(reached "$(value unit.hot.ns)" 50)"
row 5b "unit text to unit, not seen before" "the same" "below 1 us" "$(value unit.cold.ns) ns (quantity text $(value quantity.cold.ns) ns)" "$(reached "$(value unit.cold.ns)" 1000)"
row 6 "whole-job demo, full recalculation" "against the same workbook with the $(value job.formulas) formulas that call ours as constants, 15 pairs" "at most 50 ms more" "$(value job.more.ms) ms more ($(value job.ours.ms) ms and $(value job.constants.ms) ms)" "$(reached "$(value job.more.ms)" 50)"
row 7a "start of the office until it answers, with the extension and without" "15 pairs, each with a profile started before" "at most 5 % or 50 ms more" "$(value start.answers.more.ms) ms more, $(value start.answers.ratio) of $(value start.answers.without.s) s" "$(awk -v r="$(value start.answers.ratio)" -v m="$(value start.answers.more.ms)" 'BEGIN { print r == "-" ? "not measured" : r <= 1.05 || m <= 50 ? "reached" : "**not reached**" }')"
row 7b "the same until a blank sheet is open" "the same" "the same" "$(value start.sheet.more.ms) ms more, $(value start.sheet.ratio) of $(value start.sheet.without.s) s" "$(awk -v r="$(value start.sheet.ratio)" -v m="$(value start.sheet.more.ms)" 'BEGIN { print r == "-" ? "not measured" : r <= 1.05 || m <= 50 ? "reached" : "**not reached**" }')"
row 8a "takeoff list of 100,000 rows: fill, recalculate, save, load" "time a row against that of 1,000 rows" "linear (at most 1.2)" "$(value takeoff.100000.fill.linear), $(value takeoff.100000.recalc.linear), $(value takeoff.100000.save.linear), $(value takeoff.100000.load.linear) ($(value takeoff.100000.fill.s), $(value takeoff.100000.recalc.s), $(value takeoff.100000.save.s), $(value takeoff.100000.load.s) s)" "$(reached "$takeoff_linear" 1.2)"
row 8b "recalculation of its 100,000 cells" "time" "below 0.5 s" "$(value takeoff.100000.recalc.s) s; doing nothing in as many cells (2) $(value function.nothing.s) s" "$(reached "$(value takeoff.100000.recalc.s)" 0.5)"
row 9a "clean build, 2 jobs" "a copy of the sources" "below 240 s" "$(value build.clean.s) s" "$(reached "$(value build.clean.s)" 240)"
row 9b "rebuild after touching \`calc/water/outlet.cpp\`" "the same copy, all programs, tests, templates and package" "below 20 s" "$(value build.touched.s) s" "$(reached "$(value build.touched.s)" 20)"
row - "\`sheets/batch.sh\` on 40 workbooks" "recalculated, audited and printed; one after the other, two at a time, and again" "-" "$(value batch.one.s) s, $(value batch.two.s) s, $(value batch.again.s) s" "-"
cat << TEXT

## The core, function by function

Instructions a call, the loop and the call of an empty function taken off; both give the same numbers to 1e-12, or
the benchmark stops.

| function | typed | plain | ratio |
|---|---|---|---|
TEXT
awk -F '\t' '{ sub(/^core\./, "", $1); printf "| %s | %s | %s | %s |\n", $1, $2, $3, $4 }' "$core"
echo
cat "$here/found.md"
