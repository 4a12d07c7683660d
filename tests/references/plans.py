#!/usr/bin/env python3
"""Plans as LibreOffice itself writes them, for the reader's tests. The files are kept beside this
script in plans/; run it again only to make them anew.

Needs Debian's libreoffice-calc. Each sheet is written as a flat OpenDocument file with typed
cells, and LibreOffice is asked to save it as ODS, XLSX and CSV of several kinds.

    python3 tests/references/plans.py
"""
import pathlib
import shutil
import subprocess
import tempfile

HERE = pathlib.Path(__file__).parent / "plans"
HEAD = """<?xml version="1.0" encoding="UTF-8"?>
<office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0"
 xmlns:style="urn:oasis:names:tc:opendocument:xmlns:style:1.0"
 xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0"
 xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0"
 xmlns:number="urn:oasis:names:tc:opendocument:xmlns:datastyle:1.0"
 office:version="1.3" office:mimetype="application/vnd.oasis.opendocument.spreadsheet">
<office:automatic-styles>
<number:date-style style:name="D"><number:day number:style="long"/><number:text>.</number:text>
<number:month number:style="long"/><number:text>.</number:text><number:year number:style="long"/>
</number:date-style>
<number:time-style style:name="T"><number:hours/><number:text>:</number:text>
<number:minutes number:style="long"/></number:time-style>
<number:percentage-style style:name="P"><number:number number:decimal-places="0"/>
<number:text> %</number:text></number:percentage-style>
<style:style style:name="day" style:family="table-cell" style:data-style-name="D"/>
<style:style style:name="time" style:family="table-cell" style:data-style-name="T"/>
<style:style style:name="share" style:family="table-cell" style:data-style-name="P"/>
<style:style style:name="gone" style:family="table"><style:table-properties table:display="false"/>
</style:style>
</office:automatic-styles><office:body><office:spreadsheet>"""
FOOT = "</office:spreadsheet></office:body></office:document>"


def text(value):
    return f'<table:table-cell office:value-type="string"><text:p>{value}</text:p></table:table-cell>'


def number(value):
    return f'<table:table-cell office:value-type="float" office:value="{value}"/>'


def share(value):
    return f'<table:table-cell table:style-name="share" office:value-type="percentage" office:value="{value}"/>'


def day(value):
    return f'<table:table-cell table:style-name="day" office:value-type="date" office:date-value="{value}"/>'


def time(hours, minutes):
    return (f'<table:table-cell table:style-name="time" office:value-type="time" '
            f'office:time-value="PT{hours:02}H{minutes:02}M00S"/>')


def title(value, columns):
    return (f'<table:table-cell office:value-type="string" table:number-columns-spanned="{columns}" '
            f'table:number-rows-spanned="1"><text:p>{value}</text:p></table:table-cell>'
            f'<table:covered-table-cell table:number-columns-repeated="{columns - 1}"/>')


NONE = "<table:table-cell/>"


def row(*cells):
    return f"<table:table-row>{''.join(cells)}</table:table-row>"


def empty(times):
    return f'<table:table-row table:number-rows-repeated="{times}">{NONE}</table:table-row>'


def table(name, *rows, hidden=False):
    style = ' table:style-name="gone"' if hidden else ""
    return f'<table:table table:name="{name}"{style}><table:table-column/>{"".join(rows)}</table:table>'


WEEK = table(
    "Week 49",
    row(title("The week of the first of December", 9)),
    empty(2),
    row(*map(text, ["Datum", "Name", "\u00dcbung", "S\u00e4tze", "Wdh.", "Gewicht (kg)", "Leiter",
                    "Pause", "Notiz"])),
    row(day("2026-12-01"), text("Hamza"), text("rack pull"), number(1), number(5), number(182.5),
        NONE, time(3, 0), text("slow off the pins")),
    empty(1),
    row(day("2026-12-03"), text("\u017deljka"), text("rack pull"), number(2), number(5),
        number(102.5), text("fives"), text("2,5 min"), NONE),
)
SHARES = table(
    "Week 50",
    row(*map(text, ["date", "lifter", "lift", "sets", "reps", "load", "note"])),
    row(day("2026-12-08"), text("Hamza"), text("rack pull"), number(1), number(5), share(0.8), NONE),
    row(text("10.12.2026"), text("Tevita"), text("halting deadlift"), number(1), number(5),
        text("405 lb"), text("2 \u00bd finger widths")),
)
WORDS = table("how I plan", row(text("Heavy pulls once a week."), NONE), row(text("Ask me.")))
OLD = table("old", row(*map(text, ["date", "lifter", "lift", "sets", "reps", "load"])),
            row(text("yesterday"), text("Nobody"), text("x"), text("y"), text("z"), text("w")),
            hidden=True)

CSV = "csv:Text - txt - csv (StarCalc)"
# Separator, quote, character set (76 UTF-8, 1 Windows-1252, 65535 UTF-16), first line;
# some say too whether cells are written as they are shown.
JOBS = [
    ("coach", WEEK + SHARES + WORDS + OLD, [("ods", "ods"), ("xlsx", "xlsx")]),
    ("week", WEEK, [
        ("utf8.csv", CSV + ":44,34,76,1"),
        ("semicolon.csv", CSV + ":59,34,76,1,,0,false,true,true,false,false,0,,true"),
        # Cells not as they are shown: days as 12/01/2026, which can be read in two ways.
        ("us.csv", CSV + ":44,34,76,1,,0,false,true,false,false,false,0"),
        ("latin.csv", CSV + ":59,34,1,1"),
        ("utf16.csv", CSV + ":9,34,65535,1"),
    ]),
]


def main():
    HERE.mkdir(exist_ok=True)
    with tempfile.TemporaryDirectory() as folder:
        folder = pathlib.Path(folder)
        for name, tables, kinds in JOBS:
            source = folder / f"{name}.fods"
            source.write_text(HEAD + tables + FOOT, encoding="utf-8")
            for ending, how in kinds:
                out = folder / "out"
                shutil.rmtree(out, ignore_errors=True)
                subprocess.run(
                    ["soffice", f"-env:UserInstallation=file://{folder}/profile", "--headless",
                     "--convert-to", how, "--outdir", str(out), str(source)],
                    check=True, stdout=subprocess.DEVNULL)
                made = next(out.iterdir())
                kept = HERE / f"{name}.{ending}"
                shutil.copy(made, kept)
                print(kept.name, kept.stat().st_size)


if __name__ == "__main__":
    main()
