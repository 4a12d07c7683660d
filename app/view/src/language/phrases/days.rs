//! The phrases of days and clocks, both languages side by side.
crate::phrases! {
    LEFT_OPEN: "left open", "offen geblieben";
    LEFT_OPEN_CLOSED: "left open, closed the next day", "offen geblieben, am nächsten Tag beendet";
    LEFT_OPEN_HINT: "what was done stands; tap one to go on with it today", "was getan ist, gilt; tippen, um heute damit weiterzumachen";
    LEFT_OPEN_NONE: "nothing was left open", "nichts ist offen geblieben";
    LEFT_OPEN_ROW: "{0}, {1}, {2}: {3}, left open", "{0}, {1}, {2}: {3}, offen geblieben";
    LEFT_OPEN_TOLD: "{0} of {1}: {2}, left open; the coach can open it again", "{0} von {1}: {2}, offen geblieben; der Coach kann sie wieder öffnen";
    REOPENED: "{0}: the {1} of {2} is open again; go on with it at the rack", "{0}: {1} von {2} ist wieder offen; weiter geht es am Rack";
    CLOCK_UNSET: "the clock is not set; today's date is a guess until it is", "die Uhr ist nicht gestellt; bis dahin ist das Datum geraten";
    X_NOT_LEFT_OPEN: "that lift was not left open; choose one that was", "diese Übung ist nicht offen geblieben; wähl eine, die es ist";
    X_LEFT_OPEN: "the lift was left open and closed the next day; the coach can open it again", "die Übung ist offen geblieben und am nächsten Tag beendet worden; der Coach kann sie wieder öffnen";
    X_DATE_KNOWN: "the date of that lift is known; it stays", "das Datum dieser Übung ist bekannt; es bleibt";
}
