//! Keys of the coach's list, and of hurt and illness.
use crate::phrase::keys;

keys! {
    FOR_ALL "list-for-all" date;
    NOBODY "list-nobody";
    MORE "list-more" n;
    HURT "list-hurt";
    HURT_SINCE "list-hurt-since" date why;
    WRONG "list-wrong";
    WRONG_ON "list-wrong-on" date load supported;
    UNTRIED_ON "list-untried-on" date load;
    MANY_REPS_ON "list-many-reps-on" date n load;
    WRONG_TAP "list-wrong-tap";
    OVER "list-over";
    STUCK "list-stuck";
    ANEW "list-anew";
    WAITS "list-waits";
    DIFFERS "list-differs";
    DIFFERS_ON "list-differs-on" date plan due;
    AWAY "list-away";
    DUE "list-due";
    TITLE "list-title";
    HINT "list-hint";
    WAITING "list-waiting" n;
    NONE_WAITS "list-none-waits";
    COACH_CODE "list-coach-code";
    HEALTH "list-health";
    HEALTH_HINT "list-health-hint";
    FIT "list-fit";
    FIT_AGAIN "list-fit-again";
    HURT_NOW "list-hurt-now";
    ILL "list-ill";
    ILL_TODAY "list-ill-today";
    ILL_DAYS "list-ill-days" n;
    ILL_FROM_TO "list-ill-from-to" from to;
    NOTE_AT_DESK "list-note-at-desk";
    NOTE_ON_PAGE "list-note-on-page";
    AS_DUE "list-as-due";
    AS_BEFORE "list-as-before";
    AS_PLANNED "list-as-planned";
}
