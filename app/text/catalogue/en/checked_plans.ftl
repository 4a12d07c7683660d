## Any file and cell.
checked-place-and-cell = { $a }, { $b }
checked-more-bytes-than-the-most = more bytes than the most, { $a }
checked-faults-more-which-are-not =
    { $a ->
        [one] 1 fault more, which is not listed
       *[other] { $a } faults more, which are not listed
    }
checked-mend-these-first-then-check = mend these first, then check again
checked-more-of-this-kind-which =
    { $a ->
        [one] 1 more of this kind, which is not listed
       *[other] { $a } more of this kind, which are not listed
    }
checked-look-at-these-first = look at these first
checked-characters-more-than-the-most = { $a } characters, more than the most, { $b }
checked-write = write { $a }
checked-write-or-give-it-the = write { $a }, or give it the short name in the gym's files: { $b }
checked-write-the-only-one-known = write { $a }, the only one known
checked-or-one-of-more = { $a } or one of { $b } more
checked-or = { $a } or { $b }
checked-write-from-1-to-characters = write from 1 to { $a } characters on one line
checked-an-empty-text = an empty text
checked-with-a-line-break-or = with a line break or another control character
checked-not-one-of-the-words = { $a }, not one of the words for it
checked-give-gym-toml-lifters-toml = give gym.toml, lifters.toml, programme.toml, kiosk.toml, meet.toml or a plan that ends in .csv, .xlsx or .ods
checked-a-file-of-a-kind = a file of a kind that is not checked
checked-without-a-whole-gym-beside = { $a } without a whole gym beside it, so names were not checked
checked-check-it-together-with-gym = check it together with gym.toml and lifters.toml
checked-a-programme = a programme
checked-a-kiosk = a kiosk
checked-a-meet = a meet
checked-a-plan = a plan
checked-lifters = lifters

## Kinds of files.
checked-split-the-plan-or-delete = split the plan, or delete what is not plan
checked-a-binary-spreadsheet-such-as = a binary spreadsheet such as XLS
checked-a-pdf = a PDF
checked-a-word-processor-s-text = a word processor's text
checked-xml-not-a-plan = XML, not a plan
checked-zeros-between-the-letters-no = zeros between the letters: no text
checked-text-that-is-neither-utf = text that is neither UTF-8 nor Windows-1252
checked-text-whose-letters-break-off = text whose letters break off or are none

## Spreadsheets.
checked-open-it-in-the-spreadsheet = open it in the spreadsheet and save it again as XLSX or ODS
checked-a-broken-zip-archive = a broken zip archive
checked-an-archive-of-parts-more = an archive of { $a } parts, more than the most, { $b }
checked-save-it-without-a-password = save it without a password, as XLSX or ODS
checked-an-archive-with-a-part = an archive with a part that is locked or packed in an unknown way
checked-an-archive-of-more-than = an archive of more than { $a } bytes when it is unpacked
checked-delete-what-is-not-plan = delete what is not plan, or save it as CSV in UTF-8
checked-save-it-as-xlsx-ods = save it as XLSX, ODS or CSV in UTF-8
checked-a-binary-workbook-xlsb = a binary workbook, XLSB
checked-a-text-or-slides-not = a text or slides, not a spreadsheet
checked-an-opendocument-file-that-is = an OpenDocument file that is not a spreadsheet
checked-a-zip-archive-not-a = a zip archive, not a spreadsheet
checked-a-spreadsheet-whose-xml-is = a spreadsheet whose XML is broken
checked-a-table-that-stands-for = a table that stands for more than { $a } cells or { $b } bytes
checked-delete-what-stands-far-below = delete what stands far below or right of the plan
checked-a-broken-spreadsheet = a broken spreadsheet ({ $a })
checked-a-workbook-with-more-than = a workbook with more than { $a } bytes of text
checked-delete-what-is-no-plan = delete what is not plan
checked-a-workbook-of-sheets-more = a workbook of { $a } sheets, more than the most, { $b }

## Rows and columns.
checked-cells-in-a-row-more = { $a } cells in a row, more than the most, { $b }
checked-delete-what-stands-beyond-the = delete what stands beyond the plan
checked-close-it-at-the-end = close it at the end of the cell, or write it twice within
checked-a-quote-that-is-never = a quote that is never closed
checked-put-the-whole-cell-within = put the whole cell within quotes, each quote in it twice
checked-after-a-closing-quote = after a closing quote
checked-write-a-header-row-and = write a header row and a row for each lift of each day
checked-a-file-with-nothing-in = a file with nothing in it
checked-show-the-sheet-in-the = show the sheet in the spreadsheet if it belongs to the plan
checked-a-formula-without-its-result = a formula without its result
checked-open-the-file-in-a = open the file in a spreadsheet and save it there, then read it again

## Rows beside the record.
checked-where-the-record-supports = { $a }: { $b }, where the record supports { $c }
checked-check-the-load-and-its = check the load and its unit; at the rack it waits for the coach's word
checked-where-nothing-is-recorded-that = { $a }: { $b }, where nothing is recorded that supports it
checked-check-it-or-write-a = check it, or write a best into lifters.toml
checked-reps-of-work = { $a }: { $b } reps of work
checked-check-it-at-the-rack = check it; at the rack it waits for the coach's word
checked-light-and-round-in-the = { $a }: { $b }, light and round in the other unit alone, where the record supports { $c }
checked-check-the-unit = check the unit
checked-and-more-like-it = { $a }, and { $b } more like it
checked-a-hidden-sheet-left-out = a hidden sheet, left out
checked-write-a-row-for-each = write a row for each lift of each day under it
checked-a-header-and-no-row = a header and no row under it
checked-more-rows-than-the-most = more rows than the most, { $a }
checked-split-the-plan = split the plan
checked-sheet-row = sheet { $a }, row { $b }
checked-row = row { $a }
checked-for-on-again-after = { $a } for { $b } on { $c } again, after { $d }
checked-keep-one-of-the-two = keep one of the two rows
checked-begin-with-a-header-row = begin with a header row: { $a }
checked-a-first-row-that-names = a first row that names no column
checked-a-header-without = a header without { $a }
checked-add-the-column = add the column { $a }
checked-a-column-that-a-plan = a column that a plan does not have
checked-the-column-again-after-column = the column { $a } again, after column { $b }
checked-keep-one-of-them = keep one of them
checked-write-or-leave-the-column = write { $a }, or leave the column out
checked-of-a-best-in-the = of a best in the { $a } that { $b } has not recorded
checked-of-a-training-max-in = of a training max in the { $a } that { $b } does not have on { $c }
checked-write-a-mass-or-the = write a mass, or the training max in lifters.toml
checked-a-track-s-name-of = a track's name of over { $a } letters; ä, é and the like count twice
checked-write-a-shorter-one-such = write a shorter one, such as "heavy"
checked-write-a-mass-or-record = write a mass, or record the best in lifters.toml
checked-less-than-the-lightest-bar = less than the lightest bar, { $a }
checked-write-the-load-with-the = write the load with the bar counted in
checked-an-empty-cell = an empty cell
checked-write-with-its-quotes-or = write { $a } with its quotes, or with a point
checked-a-comma-within-a-cell = a comma within a cell not in quotes
checked-put-each-cell-that-holds = put each cell that holds the separator within quotes, or delete this one
checked-give-the-column-a-header = give the column a header, or delete this cell
checked-under-no-header = under no header

## Dates and times.
checked-write-year-month-day-as = write year, month, day as "2026-12-01"
checked-not-a-date = not a date
checked-a-date-with-a-year = a date with a year of two digits
checked-format-the-cells-as-dates = format the cells as dates such as "2026-12-01" and save again
checked-a-spreadsheet-s-number-of = a spreadsheet's number of a day
checked-a-day-that-is-not = a day that is not in the calendar
checked-a-year-before-2000-or = a year before 2000 or after 2099
checked-write-the-year-first-or = write the year first: { $a } or { $b }
checked-a-date-that-can-be = a date that can be read in two ways
checked-write-seconds-as-180-s = write seconds as "180 s", or minutes as "3 min", in a cell of text
checked-not-a-time = not a time
checked-a-time-that-can-be = a time that can be read as minutes or as seconds
checked-a-time-that-is-no = a time that is no rest from 15 s to 30 min
