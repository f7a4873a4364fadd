#!/usr/bin/env bash
# Makes the README's pictures from the example studio: examples/pictures/make.sh PROGRAM FOLDER
set -euo pipefail
program=$1
folder=$2
studio=$(dirname "$0")/../studio
one() { # picture, layout, dpi, what
    local picture=$1 layout=$2 dpi=$3
    shift 3
    "$program" render "$layout" "$studio" -o "$folder/$picture.png" --stock page --date 2026-11-20 --dpi "$dpi" "$@" >/dev/null
}
one cards dye-cards 110 --only fen-water --only damselfly --only scabious --only sloe
one card dye-card 110 --only haw
one index dye-index 90
one jars jar-wrap 160 --only sloe-shaker
one lid jar-lid 160 --only hedgerow
one tags hang-tag 130 --only 26-117:3-3
one lot lot-sheet 90 --only 26-117
rm "$folder/lot-2.png" # the back is a blank form
# The upper part of the first page of the stocks' chart.
"$program" stocks -o "$folder/stocks.pdf" >/dev/null
pdftoppm -r 80 -f 1 -l 1 -x 0 -y 24 -W 661 -H 590 -png -singlefile "$folder/stocks.pdf" "$folder/stocks"
rm "$folder/stocks.pdf"
