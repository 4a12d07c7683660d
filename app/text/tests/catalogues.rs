//! Every catalogue against the keys: each message is there in each language, under a key that
//! somebody uses, with the same gaps, and nothing in it is broken.
//!
//! Nobody here judges style; somebody who speaks the language reads the catalogue.
use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement};
use std::collections::{BTreeMap, BTreeSet};
use text::{Language, keys, source};

/// Phrases that say the same in another language too: names, signs, words that both have.
const ALIKE_MAX_LETTERS: usize = 9;

/// The gaps that a pattern fills or chooses by.
fn gaps(pattern: &Pattern<String>, found: &mut BTreeSet<String>) {
    for element in &pattern.elements {
        if let PatternElement::Placeable { expression } = element {
            gaps_of(expression, found);
        }
    }
}

fn gaps_of(expression: &Expression<String>, found: &mut BTreeSet<String>) {
    match expression {
        Expression::Select { selector, variants } => {
            gaps_within(selector, found);
            for variant in variants {
                gaps(&variant.value, found);
            }
        }
        Expression::Inline(inline) => gaps_within(inline, found),
    }
}

fn gaps_within(inline: &InlineExpression<String>, found: &mut BTreeSet<String>) {
    match inline {
        InlineExpression::VariableReference { id } => {
            found.insert(id.name.clone());
        }
        InlineExpression::Placeable { expression } => gaps_of(expression, found),
        InlineExpression::StringLiteral { .. } => {}
        InlineExpression::NumberLiteral { .. }
        | InlineExpression::FunctionReference { .. }
        | InlineExpression::MessageReference { .. }
        | InlineExpression::TermReference { .. } => {
            panic!("a catalogue has words and gaps alone, not {inline:?}")
        }
    }
}

/// The messages of a language with their gaps.
fn messages(language: Language) -> BTreeMap<String, BTreeSet<String>> {
    let parsed = fluent_syntax::parser::parse(source(language));
    let resource = parsed.unwrap_or_else(|(_, faults)| panic!("{language:?}: {faults:?}"));
    let mut messages = BTreeMap::new();
    for entry in resource.body {
        match &entry {
            Entry::Message(message) => {
                let id = &message.id.name;
                let pattern = message.value.as_ref();
                let pattern = pattern.unwrap_or_else(|| panic!("{id} says nothing"));
                assert!(message.attributes.is_empty(), "{id} has attributes");
                let mut found = BTreeSet::new();
                gaps(pattern, &mut found);
                assert!(
                    messages.insert(id.clone(), found).is_none(),
                    "{language:?}: {id} twice"
                );
            }
            Entry::Comment(_) | Entry::GroupComment(_) | Entry::ResourceComment(_) => {}
            Entry::Term(_) | Entry::Junk { .. } => panic!("{language:?}: {entry:?}"),
        }
    }
    messages
}

#[test]
fn every_key_is_in_every_catalogue_with_its_gaps_and_nothing_else_is() {
    let rows = keys::every();
    assert!(rows.len() > 1_000, "only {} keys", rows.len());
    let wanted: BTreeMap<String, BTreeSet<String>> = rows
        .iter()
        .map(|row| {
            let gaps = row.gaps.iter().map(|gap| (*gap).to_owned());
            (row.id.to_owned(), gaps.collect())
        })
        .collect();
    assert_eq!(wanted.len(), rows.len(), "two keys for one message");
    for language in Language::ALL {
        let found = messages(language);
        for (id, gaps) in &wanted {
            let has = found
                .get(id)
                .unwrap_or_else(|| panic!("{language:?}: no {id}"));
            assert_eq!(has, gaps, "{language:?}: the gaps of {id}");
        }
        for id in found.keys() {
            assert!(wanted.contains_key(id), "{language:?}: no key uses {id}");
        }
    }
}

#[test]
fn no_message_stands_there_untranslated() {
    for language in Language::ALL {
        for row in keys::every() {
            let (english, own) = (Language::English.template(row), language.template(row));
            assert!(!own.is_empty(), "{language:?}: {} is empty", row.id);
            let words = english.split(['{', '}']).step_by(2);
            let letters = words.flat_map(str::chars).filter(|c| c.is_alphabetic());
            let alike = language != Language::English && english == own;
            assert!(
                !alike || letters.count() <= ALIKE_MAX_LETTERS,
                "{language:?}: {} is not translated: {own}",
                row.id
            );
        }
    }
}
