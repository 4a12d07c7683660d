//! The coach who writes blocks their own way: each fault is told, with what to do, and nothing is
//! taken.
use crate::{HEAD, gym_of, read};

pub(crate) const DAY: &str = "[[programme.block.day]]\nweekday = \"Monday\"\nlifts = [{ lift = \"deadlift\", scheme = \"3x5\" }]\n";

pub(crate) fn block(keys: &str, day: &str) -> String {
    format!("[[programme.block]]\n{keys}\n{day}")
}

fn lifts(list: &str) -> String {
    let keys = "name = \"a\"\nstarts = \"2026-01-05\"\nweeks = 4";
    let day = format!("[[programme.block.day]]\nweekday = \"Monday\"\nlifts = [{list}]\n");
    HEAD.to_owned() + &block(keys, &day)
}

#[test]
#[allow(clippy::too_many_lines, reason = "a table")]
fn rude_blocks_are_told() {
    let gym = gym_of("three-and-one");
    let a = "name = \"a\"\nstarts = \"2026-01-05\"\nweeks = 4";
    let one = |keys: &str| HEAD.to_owned() + &block(keys, DAY);
    let two = |keys: &str| HEAD.to_owned() + &block(a, DAY) + &block(keys, DAY);
    let deadlift = |more: &str| lifts(&format!("{{ lift = \"deadlift\", {more} }}"));
    let cases: Vec<(String, &str)> = vec![
        (
            one("name = \"a\"\nstarts = \"2026-01-05\"\nweeks = 0"),
            "read \"0\", less than the least, 1",
        ),
        (
            one("name = \"a\"\nstarts = \"2026-01-05\"\nweeks = 53"),
            "read \"53\", more than the most, 52",
        ),
        (
            one("name = \"a\"\nstarts = \"2026-01-05\""),
            "a block without \"weeks\"",
        ),
        (
            one("name = \"a\"\nweeks = 4"),
            "read the first block without \"starts\"; write the Monday",
        ),
        (
            one("name = \"a\"\nstarts = \"2026-01-06\"\nweeks = 4"),
            "read 2026-01-06, which is no Monday; write the Monday of the first week, such as 2026-01-05",
        ),
        (
            one(&format!("{a}\ntimes = 0")),
            "read \"0\", less than the least, 1",
        ),
        (
            one(&format!("{a}\nlight_every = 2")),
            "read \"light_every\" without \"light\"",
        ),
        (
            one(&format!("{a}\nlight = \"60 %\"\nlight_every = 5")),
            "read \"5\", more than the most, 4",
        ),
        (
            one(&format!("{a}\nlight = \"100 %\"")),
            "read \"100 %\", more than the most, 95 %",
        ),
        (
            one(&format!("{a}\nlight = \"60\"")),
            "read \"60\", a share without %",
        ),
        (
            two("name = \"A\"\nweeks = 4"),
            "read \"A\", a name that row 5 has already; give each block a name of its own",
        ),
        (
            two("name = \"b\"\nstarts = \"2026-01-26\"\nweeks = 4"),
            "read 2026-01-26, while \"a\" still goes on to 2026-02-01; write 2026-02-02 or later",
        ),
        (
            HEAD.to_owned()
                + "rounds = 2\n"
                + &block(a, DAY)
                + &block("name = \"b\"\nstarts = \"2026-03-02\"\nweeks = 4", DAY),
            "read \"starts\" of a later block beside \"rounds\"",
        ),
        (
            HEAD.to_owned() + "rounds = 52\n" + &block(&format!("{a}\ntimes = 52"), DAY),
            "weeks in all, more than the most, 520",
        ),
        (
            HEAD.to_owned() + "rounds = 2\n",
            "read \"rounds\" without \"block\"",
        ),
        (
            HEAD.to_owned() + "block = []\n",
            "read no block; add [[programme.block]] tables",
        ),
        (
            HEAD.to_owned() + &block(&format!("{a}\nday = []"), ""),
            "read a block without a day; add [[programme.block.day]]",
        ),
        (HEAD.to_owned() + &block(a, ""), "a block without \"day\""),
        (
            HEAD.to_owned() + &block(a, DAY) + DAY,
            "read Monday for a second day of the block",
        ),
        (
            HEAD.to_owned()
                + &block(
                    a,
                    "[[programme.block.day]]\nweekday = \"Monday\"\nlifts = []\n",
                ),
            "read a day without a lift; write at least one lift",
        ),
        (
            HEAD.to_owned()
                + &block(
                    a,
                    "[[programme.block.day]]\nlifts = [{ lift = \"deadlift\", scheme = \"3x5\" }]\n",
                ),
            "a day of a block without \"weekday\"",
        ),
        (
            HEAD.to_owned() + "apart_days = 3\n" + &block(a, DAY),
            "read \"apart_days\" beside \"block\"; leave it out",
        ),
        (
            HEAD.to_owned()
                + "begins = [{ lifter = \"Ines\", day = \"Monday\", since = \"2026-01-05\" }]\n"
                + &block(a, DAY),
            "read \"begins\" beside \"block\"",
        ),
        (
            HEAD.to_owned()
                + &block(a, DAY)
                + "[[programme.day]]\nname = \"one\"\n[[programme.day.task]]\nalternate = [{ lift = \"deadlift\", sets = 1, reps = 5 }]\n",
            "read \"day\" beside \"block\"; put the days into the blocks",
        ),
        (
            lifts("{ lift = \"deadlfit\", scheme = \"3x5\" }"),
            "read \"deadlfit\", no lift of that name; write \"deadlift\"",
        ),
        (
            lifts(
                "{ lift = \"deadlift\", scheme = \"3x5\" }, { lift = \"deadlift\", scheme = \"1x3\" }",
            ),
            "read the deadlift again on the same day; write its sets as one scheme, or give one a track",
        ),
        (
            deadlift("scheme = \"3x5\", weeks = [\"3x5\"]"),
            "read \"scheme\" beside \"weeks\"; leave one of them out",
        ),
        (
            deadlift("note = \"slow\""),
            "read a lift without \"scheme\" and without \"weeks\"; write scheme",
        ),
        (
            deadlift("weeks = [\"3x5\", \"3x4\", \"3x3\"]"),
            "read schemes for 3 weeks in a block of 4; write one for each week",
        ),
        (
            deadlift("weeks = [\"-\", \"-\", \"-\", \"-\"]"),
            "read a lift that no week has",
        ),
        (deadlift("scheme = \"off\""), "read a lift that no week has"),
        (
            deadlift("scheme = \"3x5 @ hole 6\""),
            "read \"hole 6\", which the deadlift has not: it starts on the floor",
        ),
        (
            deadlift("scheme = \"3x5 tempo 3-0-1-0-2\""),
            "a tempo of 5 figures; write four",
        ),
        (
            deadlift("scheme = \"3x5 @ 90 % of e1RM\""),
            "a share of \"e1RM\", which is not known here",
        ),
        (
            deadlift("scheme = \"3x5\", bar = \"river bar\""),
            "read \"river bar\", which does not stand by the yard rack of Ines",
        ),
        (
            deadlift("scheme = \"3x5 bar: light bar\", bar = \"yard bar\""),
            "a bar for some of the sets of one lift",
        ),
        (
            deadlift("scheme = \"3x5\", ladder = \"triples\""),
            "no warm-up pattern of that name",
        ),
        (
            lifts("{ lift = \"rack pull\", scheme = \"3x5 hole 39\" }"),
            "read \"hole 39\", where the yard rack of Ines has 38 holes; write a hole from 1 to 38",
        ),
        (
            lifts("{ lift = \"rack pull\", scheme = \"3x5 @ 80 % TM\" }"),
            "a share of a training max in the rack pull that \"Ines\" does not have on 2026-01-05; write a mass",
        ),
        (
            lifts("{ lift = \"power snatch\", scheme = \"3x5 @ 80 %\" }"),
            "of a best in the power snatch that Ines has not recorded",
        ),
        (
            one(&format!("{a}\nlight = \"60 %\"")).replace(
                "scheme = \"3x5\"",
                "weeks = [\"3x5\", \"3x5\", \"3x5\", \"3x5\"]",
            ),
            "read a scheme for each week beside the block's \"light\"",
        ),
    ];
    let mut missed: Vec<String> = Vec::new();
    for (text, told) in cases {
        let faults = read(&text, &gym).expect_err(&text);
        let all: Vec<String> = faults.iter().map(ToString::to_string).collect();
        if !all.iter().any(|fault| fault.contains(told)) {
            missed.push(format!("wanted {told}\ntold {all:#?}"));
        }
    }
    assert!(missed.is_empty(), "{}", missed.join("\n"));
}
