//! The phrases of the pages, both languages side by side, and the language of a page.
//!
//! Refuses: files and documents, which stay in English; words that people wrote, which stay as
//! written.
use chrono::NaiveDate;
use view::Language;

view::phrases! {
    // Everywhere.
    SESSIONS: "Sessions", "Einheiten";
    PLAN: "Plan", "Plan";
    DESK: "Desk", "Schreibtisch";
    FLOOR: "Floor", "Übersicht";
    PAGES: "Pages", "Seiten";
    SIGN_OUT: "Sign out", "Abmelden";
    COACH: "Coach", "Coach";
    LANGUAGE: "Language", "Sprache";
    // The front, signing in, a lifter's link.
    FLOOR_BOARD: "Floor board", "Übersicht für alle";
    OWN_BY_CODE: "A lifter's own record opens by the code that the kiosk shows at the end of a lift.", "Die eigenen Daten öffnet der Code, den der Kiosk am Ende einer Übung zeigt.";
    CODE: "Code", "Code";
    SIGN_IN: "Sign in", "Anmelden";
    YOUR_RECORD: "Your record", "Deine Daten";
    ONCE: "This page opens once and closes ten minutes after the lift.", "Diese Seite öffnet einmal und schließt zehn Minuten nach der Übung.";
    SHOW_RECORD: "Show my record", "Meine Daten zeigen";
    NOBODY: "there is no lifter of that name on record; choose one from the list", "unter diesem Namen ist niemand bekannt; wähl jemanden aus der Liste";
    GONE: "This link was opened already, or its ten minutes are over. The kiosk shows another at the end of your next lift.", "Dieser Link wurde schon geöffnet, oder seine zehn Minuten sind um. Der Kiosk zeigt am Ende deiner nächsten Übung einen neuen.";
    TRUST: "So that this phone trusts the page", "Damit dieses Telefon der Seite traut";
    TRUST_ROOT: "the kiosk's root certificate", "das Wurzelzertifikat des Kiosks";
    TRUST_HOW: "Load it, compare its SHA-256 with the one that the kiosk's own page shows, and only then let the phone trust it. It vouches for this gym's names alone.", "Lade es, vergleiche seinen SHA-256 mit dem, den die eigene Seite des Kiosks zeigt, und lass das Telefon ihm erst dann trauen. Es bürgt nur für Namen dieses Studios.";
    // The coach's day.
    TODAY: "Today", "Heute";
    NO_DAY_YET: "The kiosk has not told its day yet; look again in a moment.", "Der Kiosk hat seinen Tag noch nicht genannt; sieh gleich noch einmal nach.";
    NEEDS_YOU: "Waits for you", "Wartet auf dich";
    NOBODY_WAITS: "Nobody waits for your word.", "Niemand wartet auf dein Wort.";
    SEE_RECORD: "See the record", "Daten ansehen";
    TRAINS_TODAY: "Trains today", "Heute dran";
    NOBODY_TRAINS: "Nobody is planned for today.", "Für heute ist niemand eingeplant.";
    DUE_AND_WHY: "Due, and why", "Fällig, und warum";
    ON_THE_FLOOR: "On the floor now", "Jetzt am Rack";
    LAST_TIME: "The last time", "Zuletzt";
    LIFT: "Lift", "Übung";
    ONE_WORK_SET: "1 work set, {0}", "1 Arbeitssatz, {0}";
    WORK_SETS: "{0} work sets, up to {1}", "{0} Arbeitssätze, bis {1}";
    SHORT_IN_ONE: "short in 1 set", "in 1 Satz zu wenig";
    SHORT_IN: "short in {0} sets", "in {0} Sätzen zu wenig";
    BACK_MOVED_AT: "back moved at rep {0}", "Rücken gab bei Wdh. {0} nach";
    BACK_MOVED: "back moved", "Rücken gab nach";
    THIS_WEEK: "This week", "Diese Woche";
    // What the coach does on it.
    OWN_LOAD: "Another load", "Eine andere Last";
    NO_REASON: "no reason given", "ohne Grund";
    RULE_IT: "Rule", "Festlegen";
    MEANT: "It is meant", "So ist es gemeint";
    FIT_AGAIN: "Fit again", "Wieder gesund";
    HEALTH: "Hurt or ill", "Verletzt oder krank";
    HEALTH_HINT: "What a lifter says; what it is, a clinician says. Who is hurt has nothing due until fit again. An illness is entered up to today; enter it again while it goes on.", "Was jemand sagt; was es ist, sagt ein Arzt. Wer verletzt ist, hat nichts fällig, bis es besser ist. Krankheit wird bis heute eingetragen; trag sie wieder ein, solange sie dauert.";
    CHOOSE: "choose", "wähle";
    FROM_DAY: "From", "Von";
    TO_DAY: "To", "Bis";
    WAS_ILL: "Ill from, to", "Krank von, bis";
    ENTER: "Enter", "Eintragen";
    IS_HURT: "Hurt from", "Verletzt ab";
    RULE_OTHERS: "Rule another load", "Eine andere Last festlegen";
    // What came of it.
    DONE_KEPT: "done, and kept in the journal", "erledigt und im Journal festgehalten";
    NOT_DONE_WHY: "nothing was changed: {0}", "nichts wurde geändert: {0}";
    ALREADY: "it is so already; nothing was changed a second time", "das steht schon da; nichts wurde zweimal geändert";
    STALE: "the list has changed since this page was loaded: somebody ruled or lifted meanwhile, or another day has begun. Nothing was changed; look at the list as it is now", "die Liste hat sich geändert, seit diese Seite geladen wurde: inzwischen hat jemand entschieden oder gehoben, oder ein neuer Tag hat begonnen. Nichts wurde geändert; sieh die Liste an, wie sie jetzt ist";
    NO_LOAD: "that is no load; write it as in 147.5, 147.5 kg or 325 lb. Nothing was changed", "das ist keine Last; schreib sie wie 147,5, 147,5 kg oder 325 lb. Nichts wurde geändert";
    TO_COME: "of a day to come nobody knows yet; write a day up to today. Nothing was changed", "von einem Tag, der noch kommt, weiß es niemand; schreib einen Tag bis heute. Nichts wurde geändert";
    SLIP: "that is more than a year ago; look at the year again. Nothing was changed", "das ist mehr als ein Jahr her; sieh das Jahr noch einmal an. Nichts wurde geändert";
    NO_LIFTER: "no lifter of this gym is called so; choose one from the list. Nothing was changed", "niemand hier heißt so; wähl jemanden aus der Liste. Nichts wurde geändert";
    // The coach's list.
    DUE_AND_WAITS: "Due, and who waits for the coach", "Fällig, und wer auf den Coach wartet";
    NOTHING_DUE: "Nothing done yet that something follows from.", "Noch nichts gemacht, woraus etwas folgt.";
    STATE: "State", "Stand";
    WHY: "Why", "Warum";
    // The board.
    WAITING: "waiting for the kiosk", "warte auf den Kiosk";
    // Sets.
    SET: "Set", "Satz";
    LOAD: "Load", "Last";
    REPS: "Reps", "Wdh.";
    BACK: "Back", "Rücken";
    WARM_UP: "warm-up", "Aufwärmen";
    WORK: "work", "Arbeit";
    OF: "{0} of {1}", "{0} von {1}";
    KEPT: "kept", "hielt";
    MOVED_AT: "moved at rep {0}", "gab bei Wdh. {0} nach";
    NO_SETS_BEFORE: "No sets were recorded before that day.", "Vor diesem Tag wurde nichts gehoben.";
    NO_SETS: "No sets have been recorded yet.", "Noch wurde nichts gehoben.";
    ALL_SETS: "All sets:", "Alle Sätze:";
    DOWNLOADS: "Downloads", "Herunterladen";
    DATABASE: "Database", "Datenbank";
    LIFTERS: "Lifters", "Leute";
    FURTHER: "Further", "Weiter";
    LATEST: "Latest", "Neueste";
    OLDER: "Older", "Ältere";
    // A lifter's weeks.
    NOTHING_OF: "Nothing is recorded of that name.", "Unter diesem Namen ist nichts bekannt.";
    SETS: "Sets", "Sätze";
    LATEST_SETS: "The latest {0} of {1} sets.", "Die neuesten {0} von {1} Sätzen.";
    LOADS_CHART: "Heaviest work load by week, {0}; a square: the back moved", "Schwerste Arbeitslast je Woche, {0}; ein Quadrat: der Rücken gab nach";
    REPS_CHART: "Reps made by week; pale: planned", "Geschaffte Wdh. je Woche; blass: geplant";
    BACKS_CHART: "Work sets by week, pale; in front: the back moved", "Arbeitssätze je Woche, blass; davor: der Rücken gab nach";
    WEEK_OF: "Week of", "Woche ab";
    HEAVIEST: "Heaviest", "Schwerste";
    MOVED_IN: "moved in {0} of {1}", "gab in {0} von {1} nach";
    // The plan and what was done.
    PLAN_AND_DONE: "Plan and done", "Geplant und geschafft";
    NO_PLAN: "No plan is kept.", "Es gibt keinen Plan.";
    NO_PLAN_HERE: "No plan is kept for these days.", "Für diese Tage gibt es keinen Plan.";
    DAY: "Day", "Tag";
    LIFTER: "Lifter", "Wer";
    PLANNED: "Planned", "Geplant";
    DONE: "Done", "Geschafft";
    AT_LOAD: "{0} at {1}", "{0} mit {1}";
    AT_SHARE: "{0} at {1} % of the best", "{0} mit {1} % der Bestleistung";
    PROGRAMME: "by the programme", "aus dem Programm";
    PROGRAMME_OF: "by the programme: {0}", "aus dem Programm: {0}";
    DONE_SETS: "{0} of {1} sets, {2} of {3} reps", "{0} von {1} Sätzen, {2} von {3} Wdh.";
    BACK_HELD: "back held", "Rücken hielt";
    BACK_MOVED_IN: "back moved in {0}", "Rücken gab in {0} nach";
    // Plans from a browser.
    HAND_IN: "Hand in a plan", "Einen Plan abgeben";
    CHOOSE_PLAN: "Choose a plan, or drop it here (CSV, XLSX, ODS; 4 MB at most)", "Wähl einen Plan, oder lass ihn hier fallen (CSV, XLSX, ODS; höchstens 4 MB)";
    READ_IT: "Read it", "Lesen";
    NOT_YET_TAKEN: "Read, not yet taken", "Gelesen, noch nicht übernommen";
    NOTHING_TAKEN_YET: "This is how the plan reads. Nothing is taken yet.", "So wird der Plan verstanden. Noch ist nichts übernommen.";
    UNDERSTOOD: "As understood", "So verstanden";
    FIRST_ROWS: "The first {0} of {1} rows; all of them are taken together.", "Die ersten {0} von {1} Zeilen; übernommen werden alle zusammen.";
    TAKE_PLAN: "Take this plan", "Diesen Plan übernehmen";
    MEND_IT: "Mend the file and choose it again; nothing of it is taken until it has no fault.", "Bessere die Datei aus und wähl sie noch einmal; nichts davon wird übernommen, solange ein Fehler darin ist.";
    ANOTHER_FILE: "Another file", "Eine andere Datei";
    TOOK_ROW: "took 1 row; it is kept in the journal", "1 Zeile übernommen und im Journal festgehalten";
    TOOK_ROWS: "took {0} rows; they are kept in the journal", "{0} Zeilen übernommen und im Journal festgehalten";
    PLAN_GONE: "that plan lies here no longer: it was taken, others came after it, or the kiosk began anew. Nothing was taken now; look at the plan, and choose the file again", "dieser Plan liegt nicht mehr hier: er wurde übernommen, andere kamen danach, oder der Kiosk fing neu an. Jetzt wurde nichts übernommen; sieh den Plan an und wähl die Datei noch einmal";
    PLAN_FAULTS: "refused: the plan has faults; nothing was taken. Mend the file and choose it again", "abgelehnt: der Plan hat Fehler; nichts wurde übernommen. Bessere die Datei aus und wähl sie noch einmal";
    GYM_CHANGED: "the gym's files have changed since this plan was read; nothing was taken. Choose the file again", "die Dateien des Studios haben sich geändert, seit dieser Plan gelesen wurde; nichts wurde übernommen. Wähl die Datei noch einmal";
    DAYS_CHANGED: "somebody changed one of these days since this page was loaded; nothing was taken. Look at what would change now, and take it then", "seit diese Seite geladen wurde, hat jemand einen dieser Tage geändert; nichts wurde übernommen. Sieh an, was sich jetzt ändern würde, und übernimm dann";
    PLAN_BUSY: "another plan is being read; try again in a moment", "gerade wird ein anderer Plan gelesen; versuch es gleich noch einmal";
    PLAN_LONG: "the file is longer than 4 MB; split the plan", "die Datei ist größer als 4 MB; teil den Plan";
    PLAN_SLOW: "the file did not come within 60 s; try again nearer to the kiosk", "die Datei kam nicht innerhalb von 60 s; versuch es näher am Kiosk";
    FILE_KIND: "send the file as multipart/form-data", "schick die Datei als multipart/form-data";
    NO_FILE: "no file was chosen, or it is empty; choose a plan", "keine Datei gewählt, oder sie ist leer; wähl einen Plan";
    // The coach's desk.
    STICK: "Stick", "Stick";
    NO_STICK: "No stick is in, or kiosk.toml names no place for sticks.", "Kein Stick steckt, oder kiosk.toml nennt keinen Ort für Sticks.";
    NO_PLAN_ON_IT: "No plan is on it.", "Es ist kein Plan darauf.";
    PASSED_OVER: "Passed over {0}", "Übergangen: {0}";
    ROW: "1 row", "1 Zeile";
    ROWS: "{0} rows", "{0} Zeilen";
    FAULT: "1 fault", "1 Fehler";
    FAULTS: "{0} faults", "{0} Fehler";
    WHAT_CHANGES: "What changes", "Was sich ändert";
    CHANGE: "{0}: {1}, {2}", "{0}: {1}, {2}";
    SPAN: "{0} to {1}", "{0} bis {1}";
    NEW_DAY: "1 new day", "1 neuer Tag";
    NEW_DAYS: "{0} new days", "{0} neue Tage";
    CHANGED_DAY: "1 changed day", "1 geänderter Tag";
    CHANGED_DAYS: "{0} changed days", "{0} geänderte Tage";
    SAME_DAY: "1 day as before", "1 Tag wie bisher";
    SAME_DAYS: "{0} days as before", "{0} Tage wie bisher";
    TAKE_ALL: "Take all of it", "Alles übernehmen";
    WRITE_TO_IT: "Write the record to it", "Die Daten daraufschreiben";
    COPIES: "Copies of the journal", "Kopien des Journals";
    COPY_NOW: "Copy now", "Jetzt kopieren";
    COPY: "1 copy", "1 Kopie";
    COPIES_COUNT: "{0} copies", "{0} Kopien";
    COPIED_AT_NIGHT: "Last nightly copy: {0}, {1} events.", "Letzte nächtliche Kopie: {0}, {1} Ereignisse.";
    NOT_AT_NIGHT: "No nightly copy on {0}; it is tried again every quarter of an hour: {1}", "Keine nächtliche Kopie am {0}; alle Viertelstunde ein neuer Versuch: {1}";
    RESTORE: "Restore this copy", "Diese Kopie zurückholen";
    BLANK_PLAN: "A blank plan", "Ein leerer Plan";
    CERTIFICATE: "This page's certificate", "Das Zertifikat dieser Seite";
    // Answers of the desk.
    NO_ORDERS: "this kiosk takes no orders", "dieser Kiosk nimmt keine Aufträge an";
    NOT_YET: "the kiosk has not answered yet; look again in a moment", "der Kiosk hat noch nicht geantwortet; sieh gleich noch einmal nach";
    TOOK: "took {0} rows; the stick may be pulled", "{0} Zeilen übernommen; der Stick darf heraus";
    NOT_TAKEN: "nothing was taken: {0}", "nichts wurde übernommen: {0}";
    OTHER_STICK: "another stick is in by now, or none; look again", "inzwischen steckt ein anderer Stick oder keiner; sieh noch einmal nach";
    STICK_FAULTS: "refused: the stick has faults; nothing was taken", "abgelehnt: der Stick hat Fehler; nichts wurde übernommen";
    NO_PLACE_STICKS: "no place for sticks is set; write stick = \"...\" into kiosk.toml", "kein Ort für Sticks ist gesetzt; schreib stick = \"...\" in kiosk.toml";
    WRITTEN: "the record is on the stick; it may be pulled", "die Daten sind auf dem Stick; er darf heraus";
    NOT_WRITTEN: "the record is not on the stick: {0}", "die Daten sind nicht auf dem Stick: {0}";
    NO_PLACE: "no second place is set; write backup = \"...\" into kiosk.toml", "kein zweiter Ort ist gesetzt; schreib backup = \"...\" in kiosk.toml";
    COPIED: "copied and proven: {0} events", "kopiert und geprüft: {0} Ereignisse";
    NOT_COPIED: "no copy: {0}", "keine Kopie: {0}";
    PUTTING_BACK: "a copy is being put back already; wait for it", "eine Kopie wird gerade zurückgelegt; warte darauf";
    COPY_GONE: "that copy is gone; look again", "diese Kopie gibt es nicht mehr; sieh noch einmal nach";
    RESTORED: "restored {0} events; the journal before is kept beside it", "{0} Ereignisse zurückgeholt; das Journal von vorher liegt daneben";
    NOT_RESTORED: "nothing was restored: {0}", "nichts wurde zurückgeholt: {0}";
    // Why somebody is not signed in.
    NO_CODE: "no code is set; the owner sets one with: pinladder code", "kein Code ist gesetzt; der Betreiber setzt ihn mit: pinladder code";
    WRONG: "that is not the code; ask the owner for it", "das ist nicht der Code; frag den Betreiber danach";
    WAIT: "too many wrong codes; try again in {0} s", "zu viele falsche Codes; versuch es in {0} s noch einmal";
    NOT_JUDGED: "the code cannot be judged now; the kiosk's log says why", "der Code lässt sich gerade nicht prüfen; das Protokoll des Kiosks sagt, warum";
    // Problems.
    NOT_DONE: "That did not work", "Das ging nicht";
    TO_FRONT: "To the first page", "Zur ersten Seite";
    SIGN_IN_FIRST: "sign in at /sign-in with the coach's code first", "melde dich zuerst bei /sign-in mit dem Code des Coachs an";
    NAME_NO_TEXT: "the name in the address is no text", "der Name in der Adresse ist kein Text";
    NO_BLANKS: "this kiosk offers no blank plan; pinladder plan blank writes one", "dieser Kiosk bietet keinen leeren Plan; pinladder plan blank schreibt einen";
    NOTHING_HERE: "nothing is here; /openapi.json says what there is", "hier ist nichts; /openapi.json sagt, was es gibt";
    NO_DAY: "before must be a day such as 2026-03-31", "before muss ein Tag sein, etwa 2026-03-31";
    NO_SUCH_ORDER: "order must be take, write, copy or restore", "order muss take, write, copy oder restore sein";
    NO_SUCH_DEED: "do must be rule, meant, hurt, fit or ill, with its fields", "do muss rule, meant, hurt, fit oder ill sein, mit den Feldern dazu";
    NO_DATE: "write a day such as 2026-03-31", "schreib einen Tag wie 2026-03-31";
    NO_SUCH_LANGUAGE: "language must be en or de", "language muss en oder de sein";
    FORM_KIND: "send the form as application/x-www-form-urlencoded", "schick das Formular als application/x-www-form-urlencoded";
    FORM_LONG: "the form is longer than it can be, or broke off", "das Formular ist länger, als es sein kann, oder brach ab";
    FORM_SLOW: "the form did not come within 10 s", "das Formular kam nicht innerhalb von 10 s";
    FORM_BROKEN: "the form is no form", "das Formular ist keines";
    FIELD: "a field of the form is missing, or there twice", "ein Feld des Formulars fehlt oder steht zweimal da";
    TOO_MANY_CODES: "too many wrong codes; wait, and ask the owner for the code", "zu viele falsche Codes; warte, und frag den Betreiber nach dem Code";
    METHOD: "this address does not take that method; Allow says which it takes", "diese Adresse kennt die Methode nicht; Allow sagt, welche sie kennt";
    LONG_ADDRESS: "the address is longer than 1024 bytes", "die Adresse ist länger als 1024 Bytes";
    ONE_HOST: "the request must name one host", "die Anfrage muss einen Host nennen";
    OTHER_HOST: "this server answers to its IP address, to localhost, to names in .local and to those in kiosk.toml (hosts)", "dieser Server hört auf seine IP-Adresse, auf localhost, auf Namen in .local und auf die in kiosk.toml (hosts)";
    NO_ROOT: "this page has no root of its own to trust", "diese Seite hat keine eigene Wurzel, der zu trauen wäre";
    ONLY_TLS: "this page takes forms under TLS alone; open it with https:// and type it again", "diese Seite nimmt Formulare nur unter TLS; öffne sie mit https:// und schreib es noch einmal";
    OTHER_SITE: "a page of another site may not ask for this", "die Seite eines anderen darf das nicht verlangen";
    MANY_BOARDS: "too many boards follow at once; close one", "zu viele Übersichten sind offen; schließ eine";
    MANY_READERS: "too many are reading at once; try again in a moment", "zu viele lesen gerade; versuch es gleich noch einmal";
    UNREADABLE: "the record cannot be read; the kiosk's log says why", "die Daten sind nicht lesbar; das Protokoll des Kiosks sagt, warum";
    SLOW: "the record is slow to read just now; try again in a moment", "die Daten kommen gerade langsam; versuch es gleich noch einmal";
}

/// Every phrase of the pages with its key, for whoever checks that none is missing.
#[must_use]
pub fn every_page_phrase() -> Vec<(&'static str, view::language::Phrase)> {
    ALL.to_vec()
}

/// "Monday 2 March 2026"; a day that the calendar does not have stays as it is.
pub(crate) fn long_day(say: Language, date: &str) -> String {
    let year = date.split('-').next().unwrap_or_default();
    let day = date.parse::<NaiveDate>();
    day.map_or_else(
        |_| date.to_owned(),
        |day| format!("{} {year}", say.date(day)),
    )
}

/// "2 Mar 2026"; a day that the calendar does not have stays as it is.
pub(crate) fn day_and_year(say: Language, date: &str) -> String {
    let year = date.split('-').next().unwrap_or_default();
    let day = date.parse::<NaiveDate>();
    day.map_or_else(
        |_| date.to_owned(),
        |day| format!("{} {year}", say.short_date(day)),
    )
}

/// "Mon 2 Mar 2026"; a day that the calendar does not have stays as it is.
pub(crate) fn short_day(say: Language, date: &str) -> String {
    let day = date.parse::<NaiveDate>();
    day.map_or_else(|_| date.to_owned(), |day| say.short_day(day))
}
