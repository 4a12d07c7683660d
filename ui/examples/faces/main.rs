//! Draws every screen with invented lifters: `cargo run -p ui --example faces -- FOLDER [NAME]`.
//!
//! For whoever works on the look. Refuses: real lifters, a display.
#![allow(clippy::print_stdout, reason = "a tool for the terminal")]
mod bars;
mod draw;
mod floors;
mod histories;
mod ladders;
mod meets;
mod scenes;
mod settles;
mod turns;
mod whys;
mod words;

use std::error::Error;
use std::fs;
use std::io::BufWriter;
use std::path::{Path, PathBuf};

/// Panels that the layout must fit.
const SIZES: [(u32, u32); 4] = [(1280, 800), (1024, 600), (1920, 1080), (800, 1280)];

fn main() -> Result<(), Box<dyn Error>> {
    let mut args = std::env::args().skip(1);
    let folder = PathBuf::from(args.next().ok_or("say which folder to draw into")?);
    let only = args.next().unwrap_or_default();
    fs::create_dir_all(&folder)?;
    for (name, frame) in scenes::all() {
        if !name.contains(&only) {
            continue;
        }
        for (width, height) in SIZES {
            let picture = ui::picture(&frame, width, height)?;
            save(&folder.join(format!("{name}-{width}.png")), &picture)?;
        }
        println!("{name}");
    }
    Ok(())
}

fn save(path: &Path, picture: &ui::Picture) -> Result<(), Box<dyn Error>> {
    let file = BufWriter::new(fs::File::create(path)?);
    let mut encoder = png::Encoder::new(file, picture.width, picture.height);
    encoder.set_color(png::ColorType::Rgba);
    encoder.set_depth(png::BitDepth::Eight);
    encoder.write_header()?.write_image_data(&picture.pixels)?;
    Ok(())
}
