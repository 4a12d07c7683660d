//! Compiles the Slint sources; embeds the fonts so that pictures are the same on every machine.
fn main() -> Result<(), slint_build::CompileError> {
    let config = slint_build::CompilerConfiguration::new()
        .embed_resources(slint_build::EmbedResourcesKind::EmbedFiles);
    slint_build::compile_with_config("window.slint", config)
}
