"""Writes the workbooks of app/plan/tests/coaches/good.txt with openpyxl and odfpy, two libraries of
other hands, and holds what `pinladder plan read` understands against what is meant there.

    python3 tests/references/coaches.py target/debug/pinladder [--libreoffice]

With --libreoffice each XLSX is opened and saved again by LibreOffice, as XLSX and as ODS. Needs
openpyxl and odfpy from PyPI; none of it is part of `cargo test`.
"""
import datetime
import pathlib
import re
import subprocess
import sys
import tempfile

import openpyxl
from odf import style, table, text
from odf.opendocument import OpenDocumentSpreadsheet
from openpyxl.styles import Font

ROOT = pathlib.Path(__file__).resolve().parents[2]
GOOD = ROOT / "app/plan/tests/coaches/good.txt"


def books():
    """Title, sheets, first Monday and meaning of each workbook."""
    found, meant = [], False
    for line in GOOD.read_text().splitlines():
        if line.startswith("## "):
            found.append({"title": line[3:], "sheets": [], "monday": None, "meant": []})
            meant = False
            continue
        if not found:
            continue
        book = found[-1]
        if meant:
            book["meant"] += [line] if line else []
            continue
        if line == "=>":
            meant = True
        elif line.startswith("monday "):
            book["monday"] = line[7:]
        elif line.startswith("sheet "):
            book["sheets"].append({"name": line[6:], "rows": [], "hidden": []})
        elif line:
            if not book["sheets"]:
                book["sheets"].append({"name": "plan", "rows": [], "hidden": []})
            sheet = book["sheets"][-1]
            if line.startswith("hide "):
                sheet["hidden"].append(int(line[5:]))
            else:
                sheet["rows"].append("" if line == "." else line)
    return found


def cell(raw):
    """Kind and value of a cell."""
    raw = raw.strip().replace("\\n", "\n")
    typed = re.fullmatch(r"\{(\S+) (.*)\}", raw)
    if typed:
        kind, value = typed.groups()
        if kind == "d":
            return "day", datetime.date.fromisoformat(value)
        if kind == "t":
            hours, minutes = map(int, value.split(":"))
            return "time", datetime.time(hours, minutes)
        return ("share" if kind == "%" else "number"), float(value)
    if raw in ("", "<", "^"):
        return {"": "none", "<": "left", "^": "above"}[raw], None
    struck = re.fullmatch(r"--(.+)--", raw, re.DOTALL)
    return ("struck", struck.group(1)) if struck else ("text", raw)


def grid(sheet):
    """Rows of cells, which are hidden, and the merged ranges."""
    rows = [[cell(raw) for raw in row.lstrip("~").split("|")] for row in sheet["rows"]]
    hidden = [row.startswith("~") for row in sheet["rows"]]

    def kind(row, column):
        return rows[row][column][0] if row < len(rows) and column < len(rows[row]) else None

    spans = {}
    for y, row in enumerate(rows):
        for x, (is_kind, _) in enumerate(row):
            if is_kind in ("none", "left", "above"):
                continue
            down, along = 0, 0
            while kind(y + down + 1, x) == "above":
                down += 1
            while kind(y, x + along + 1) == "left":
                along += 1
            if down or along:
                spans[(y, x)] = (down, along)
    return rows, hidden, spans


def with_openpyxl(book, path):
    out = openpyxl.Workbook()
    out.remove(out.active)
    for sheet in book["sheets"]:
        page = out.create_sheet(sheet["name"])
        rows, hidden, spans = grid(sheet)
        for y, row in enumerate(rows, 1):
            page.row_dimensions[y].hidden = hidden[y - 1]
            for x, (kind, value) in enumerate(row, 1):
                if kind in ("none", "left", "above"):
                    continue
                at = page.cell(y, x)
                at.value = value
                if kind in ("text", "struck"):
                    at.data_type = "s"
                at.number_format = {"day": "DD.MM.YYYY", "share": "0%", "time": "h:mm"}.get(kind, "General")
                if kind == "struck":
                    at.font = Font(strike=True)
        for (y, x), (down, along) in spans.items():
            page.merge_cells(start_row=y + 1, start_column=x + 1, end_row=y + down + 1, end_column=x + along + 1)
        for column in sheet["hidden"]:
            page.column_dimensions[openpyxl.utils.get_column_letter(column + 1)].hidden = True
    out.save(path)


def with_odfpy(book, path):
    out = OpenDocumentSpreadsheet()
    struck = style.Style(name="struck", family="table-cell")
    struck.addElement(style.TextProperties(textlinethroughstyle="solid"))
    out.automaticstyles.addElement(struck)
    for sheet in book["sheets"]:
        page = table.Table(name=sheet["name"])
        rows, hidden, spans = grid(sheet)
        for column in range(max((len(row) for row in rows), default=0)):
            shown = {"visibility": "collapse"} if column in sheet["hidden"] else {}
            page.addElement(table.TableColumn(**shown))
        for y, row in enumerate(rows):
            line = table.TableRow(**({"visibility": "collapse"} if hidden[y] else {}))
            for x, (kind, value) in enumerate(row):
                if kind in ("left", "above"):
                    line.addElement(table.CoveredTableCell())
                    continue
                more = {}
                if (y, x) in spans:
                    down, along = spans[(y, x)]
                    more = {"numberrowsspanned": down + 1, "numbercolumnsspanned": along + 1}
                if kind in ("number", "share"):
                    more |= {"valuetype": "float" if kind == "number" else "percentage", "value": value}
                elif kind == "day":
                    more |= {"valuetype": "date", "datevalue": value.isoformat()}
                elif kind == "time":
                    more |= {"valuetype": "time", "timevalue": f"PT{value.hour:02}H{value.minute:02}M00S"}
                elif kind in ("text", "struck"):
                    more |= {"valuetype": "string"}
                if kind == "struck":
                    more |= {"stylename": struck}
                one = table.TableCell(**more)
                for part in value.split("\n") if kind in ("text", "struck") else []:
                    one.addElement(text.P(text=part))
                line.addElement(one)
            page.addElement(line)
        out.spreadsheet.addElement(page)
    out.save(path)


def understood(program, data, book, path):
    """Lines as good.txt has them, of what the program prints."""
    words = [program, "--data", data, "plan", "read", path]
    words += ["--monday", book["monday"]] if book["monday"] else []
    said = subprocess.run(words, capture_output=True, text=True, check=False)
    return said.stdout.splitlines()


def meant_lines(book):
    """The rows that are meant, as `plan read` prints them but for where they stand."""
    lines = []
    for line in book["meant"]:
        if line.startswith(("odd ", "? ")):
            continue
        day, rest = line.split(" ", 1)
        lines.append(day + " " + re.sub(r"[\W_]+", " ", rest).strip())
    return lines


def told_lines(lines):
    rows = [line for line in lines if re.match(r"\d{4}-\d\d-\d\d  ", line)]
    rows = [re.sub(r"  \[[^\]]*\]$", "", row) for row in rows]
    return [row[:10] + " " + re.sub(r"[\W_]+", " ", row[12:]).strip() for row in rows]


def main():
    program = str(pathlib.Path(sys.argv[1]).resolve())
    office = "--libreoffice" in sys.argv
    folder = pathlib.Path(tempfile.mkdtemp())
    data = folder / "data"
    data.mkdir()
    gym = (ROOT / "demo-data/gym.toml").read_text()
    gym += '\n[[lift]]\nname = "rack pull"\nalso = ["RP"]\n\n[[lift]]\nname = "deadlift"\nalso = ["DL", "Kreuzheben"]\n\n[[lift]]\nname = "halting deadlift"\nalso = ["halting"]\n'
    (data / "gym.toml").write_text(gym)
    lifters = (ROOT / "demo-data/lifters.toml").read_text()
    (data / "lifters.toml").write_text(lifters.replace('name = "Tevita"', 'name = "Tevita"\nalso = ["Tev"]'))
    tried = wrong = 0
    for number, book in enumerate(books()):
        made = []
        for write, ending in ((with_openpyxl, "xlsx"), (with_odfpy, "ods")):
            path = folder / f"{number:02}.{ending}"
            write(book, str(path))
            made.append(path)
        if office:
            for ending in ("xlsx", "ods"):
                out = folder / f"office-{ending}"
                words = ["soffice", "--headless", "--convert-to", ending, "--outdir", str(out), str(made[0])]
                subprocess.run(words, capture_output=True, check=True)
                made.append(out / f"{number:02}.{ending}")
        for path in made:
            tried += 1
            said = understood(program, str(data), book, str(path))
            if told_lines(said) != meant_lines(book):
                wrong += 1
                print(f"## {book['title']} as {path.parent.name}/{path.name}")
                print("meant:", *meant_lines(book), sep="\n  ")
                print("told:", *said, sep="\n  ")
    print(f"{tried} workbooks, {wrong} read otherwise than meant")
    sys.exit(wrong > 0)


if __name__ == "__main__":
    main()
