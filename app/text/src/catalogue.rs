//! The catalogues: read once for each language that is spoken, and kept.
//!
//! A catalogue is whole: a test holds each against the keys. Whatever would be missing all the
//! same is said by its identifier, since a screen without one word is better than none.
use crate::{Language, Message, keys};
use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use std::collections::BTreeMap;
use std::sync::OnceLock;
use unic_langid::LanguageIdentifier;

/// The files of a language's folder.
macro_rules! folder {
    ($code:literal) => {
        [
            include_str!(concat!("../catalogue/", $code, "/checked_blocks.ftl")),
            include_str!(concat!("../catalogue/", $code, "/checked_gym.ftl")),
            include_str!(concat!("../catalogue/", $code, "/checked_kiosk.ftl")),
            include_str!(concat!("../catalogue/", $code, "/checked_manners.ftl")),
            include_str!(concat!("../catalogue/", $code, "/checked_plans.ftl")),
            include_str!(concat!("../catalogue/", $code, "/checked_schemes.ftl")),
            include_str!(concat!("../catalogue/", $code, "/coach.ftl")),
            include_str!(concat!("../catalogue/", $code, "/dates.ftl")),
            include_str!(concat!("../catalogue/", $code, "/days.ftl")),
            include_str!(concat!("../catalogue/", $code, "/desk.ftl")),
            include_str!(concat!("../catalogue/", $code, "/groups.ftl")),
            include_str!(concat!("../catalogue/", $code, "/list.ftl")),
            include_str!(concat!("../catalogue/", $code, "/loads.ftl")),
            include_str!(concat!("../catalogue/", $code, "/page.ftl")),
            include_str!(concat!("../catalogue/", $code, "/screen.ftl")),
            include_str!(concat!("../catalogue/", $code, "/shipped.ftl")),
            include_str!(concat!("../catalogue/", $code, "/turn.ftl")),
        ]
    };
}

/// The text of a language's catalogue, in Fluent's syntax.
#[must_use]
pub fn source(language: Language) -> String {
    match language {
        Language::English => folder!("en"),
        Language::German => folder!("de"),
        Language::Spanish => folder!("es"),
    }
    .concat()
}

/// Digits that a number can have so that it is exact as Fluent keeps it.
const DIGITS_MAX: usize = 15;

/// Gaps as a template has them.
pub(crate) const GAPS: [&str; 8] = ["{0}", "{1}", "{2}", "{3}", "{4}", "{5}", "{6}", "{7}"];

/// One language's messages.
pub(crate) struct Catalogue {
    bundle: FluentBundle<FluentResource>,
    /// The messages without gaps, most of what a frame asks for.
    plain: BTreeMap<&'static str, String>,
}

impl Catalogue {
    /// The catalogue of a language, read when it is first asked for.
    pub(crate) fn of(language: Language) -> &'static Self {
        static READ: [OnceLock<Catalogue>; Language::ALL.len()] =
            [const { OnceLock::new() }; Language::ALL.len()];
        READ[language as usize].get_or_init(|| Self::read(language))
    }

    fn read(language: Language) -> Self {
        let tag = language.code().parse::<LanguageIdentifier>();
        let mut bundle = FluentBundle::new_concurrent(vec![tag.unwrap_or_default()]);
        // No screen of ours mixes directions of writing.
        bundle.set_use_isolating(false);
        let source = source(language);
        // What cannot be read is left out of the resource; the tests allow none of it.
        let resource = FluentResource::try_new(source).unwrap_or_else(|(resource, _)| resource);
        drop(bundle.add_resource(resource));
        let without_gaps = keys::every().into_iter().filter(|row| row.gaps.is_empty());
        let plain = without_gaps
            .map(|row| (row.id, said(&bundle, row.id, None)))
            .collect();
        Self { bundle, plain }
    }

    /// A message without gaps.
    pub(crate) fn plain(&'static self, id: &'static str) -> &'static str {
        self.plain.get(id).map_or(id, String::as_str)
    }

    /// A message with its gaps filled.
    pub(crate) fn filled(&self, message: Message, gaps: &[&str]) -> String {
        let mut args = FluentArgs::with_capacity(message.gaps.len());
        for (name, gap) in message.gaps.iter().zip(gaps) {
            args.set(*name, value(gap));
        }
        said(&self.bundle, message.id, Some(&args))
    }
}

fn said(bundle: &FluentBundle<FluentResource>, id: &str, args: Option<&FluentArgs<'_>>) -> String {
    let pattern = bundle.get_message(id).and_then(|message| message.value());
    pattern.map_or_else(
        || id.to_owned(),
        |pattern| {
            let mut faults = Vec::new();
            bundle
                .format_pattern(pattern, args, &mut faults)
                .into_owned()
        },
    )
}

/// A number where digits alone stand there, so that a message can tell one from many; it is
/// written as it came all the same.
fn value(gap: &str) -> FluentValue<'_> {
    let digits = gap.len() <= DIGITS_MAX && gap.bytes().all(|byte| byte.is_ascii_digit());
    if digits && !gap.is_empty() && (gap == "0" || !gap.starts_with('0')) {
        FluentValue::try_number(gap)
    } else {
        FluentValue::from(gap)
    }
}
