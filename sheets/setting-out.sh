#!/bin/sh
# Writes the points to set a bed out by, of a workbook of the whole job: sh sheets/setting-out.sh JOB.ods POINTS.csv
# One point a line: name, east, north, level. The workbook is computed anew and never changed.
set -eu
root=$(cd "$(dirname "$0")/.." && pwd)
(cd "$root" && . tests/setup.sh && need_build) >&2 || exit 2
exec "$root/build/sheets/write_points" "$root/build/extensions" "$@"
