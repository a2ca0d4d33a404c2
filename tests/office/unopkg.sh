#!/bin/sh
# Installs the package as a person does, with unopkg and not as root, and lets that person's Calc compute with it.
#   unopkg.sh undercroft.oxt
set -eu
oxt=$1
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
cp "$oxt" "$folder/undercroft.oxt"
cat > "$folder/sheet.fods" <<'SHEET'
<?xml version="1.0" encoding="UTF-8"?>
<office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2" office:version="1.2" office:mimetype="application/vnd.oasis.opendocument.spreadsheet">
<office:body><office:spreadsheet><table:table table:name="Sheet1"><table:table-row>
<table:table-cell table:formula="of:=UNDERCROFT.UC.PITVOLUME(&quot;20 m&quot;;&quot;10 m&quot;;&quot;3 m&quot;;&quot;2H:1V&quot;)"/>
</table:table-row></table:table></office:spreadsheet></office:body></office:document>
SHEET
chmod -R a+rX "$folder"
mkdir "$folder/home"

if [ "$(id -u)" = 0 ]; then
  chown nobody "$folder/home" "$folder"
  as_user() { runuser -u nobody -- env HOME="$folder/home" "$@"; }
else
  as_user() { env HOME="$folder/home" "$@"; }
fi
cd "$folder"
profile="-env:UserInstallation=file://$folder/home/profile"

as_user unopkg add --suppress-license "$profile" "$folder/undercroft.oxt" > "$folder/home/add.log" 2>&1 || { cat "$folder/home/add.log"; exit 1; }
as_user unopkg list "$profile" > "$folder/home/list.log" 2>&1
cat "$folder/home/list.log"
grep -q 'undercroft.addin' "$folder/home/list.log"
if grep -q 'is registered: no' "$folder/home/list.log"; then echo "a part of the package is not registered" >&2; exit 1; fi
registered=$(grep -c 'is registered: yes' "$folder/home/list.log")
[ "$registered" -ge 2 ]

as_user soffice --headless "$profile" --convert-to csv --outdir "$folder/home" "$folder/sheet.fods" > /dev/null 2>&1
result=$(cat "$folder/home/sheet.csv")
echo "the sheet shows: $result"
[ "$result" = 1284 ]
