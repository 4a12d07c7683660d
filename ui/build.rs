//! Compiles the Slint sources; embeds the fonts so that pictures are the same on every machine.
//!
//! Refuses: names of elements in what ships; only a debug build carries them, for the tests that
//! look elements up.
fn main() -> Result<(), slint_build::CompileError> {
    let debug = std::env::var("PROFILE").is_ok_and(|profile| profile == "debug");
    let config = slint_build::CompilerConfiguration::new()
        .embed_resources(slint_build::EmbedResourcesKind::EmbedFiles)
        .with_bundled_translations("lang")
        // A word means the same on every screen.
        .with_default_translation_context(slint_build::DefaultTranslationContext::None)
        .with_debug_info(debug);
    slint_build::compile_with_config("window.slint", config)
}
