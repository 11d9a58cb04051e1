#!/bin/sh
# Recalculates spreadsheets with LibreOffice, an office program that had no part in writing them, and leaves every
# sheet as CSV with full precision.
#
#   src/test/scripts/recalculate.sh FOLDER-WITH-XLSX FOLDER-FOR-CSV
#
# Needs LibreOffice Calc (Debian: apt install libreoffice-calc). Every formula is computed anew when a file is loaded:
# the values that the files carry are not looked at. The committed results stand in
# src/test/resources/fairflame/document/recalculated with a note of program and date.
set -eu
from=$1
to=$2
profile=$(mktemp -d)
trap 'rm -rf "$profile"' EXIT
mkdir -p "$profile/user" "$to"
cat > "$profile/user/registrymodifications.xcu" <<'XCU'
<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema"
    xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
</oor:items>
XCU
# 44,34,76: comma, double quote, UTF-8; then: not as shown but as it is, all sheets (-1), a file for each.
soffice --headless "-env:UserInstallation=file://$profile" \
    --convert-to 'csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,false,false,false,false,-1' \
    --outdir "$to" "$from"/*.xlsx
