#!/bin/sh
# Brings a workbook of the first release up to date: sh sheets/write-units.sh FILE OUT.ods. The result that one function
# hands to another gets its unit written with it, UC.PRODUCT(2; A1:B1; "m") as UC.QUANTITY(UC.PRODUCT(2; A1:B1; "m"); "m"),
# because a bare number is refused beside a quantity. The file itself is never changed.
set -eu
root=$(cd "$(dirname "$0")/.." && pwd)
(cd "$root" && . tests/setup.sh && need_build) >&2 || exit 2
exec "$root/build/sheets/write_units" "$root/build/extensions" "$@"
