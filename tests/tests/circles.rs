//! Which files of a crate import each other in a circle. Refuses: a circle of more than three files.
use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};
use syn::visit::{self, Visit};

/// The most files that may import each other round about.
const MOST: usize = 3;
/// A file by its place in the tree of modules; the crate's root is empty.
type Module = Vec<String>;

/// The paths that one file names, outside its tests.
struct Named {
    module: Module,
    paths: BTreeSet<Vec<String>>,
}

impl Named {
    fn take(&mut self, path: &[String]) {
        let mut at = self.module.clone();
        let mut rest = path;
        match path.first().map(String::as_str) {
            Some("crate") => (at, rest) = (Vec::new(), &path[1..]),
            Some("self" | "super") => {
                while let Some(step @ ("self" | "super")) = rest.first().map(String::as_str) {
                    if step == "super" {
                        at.pop();
                    }
                    rest = &rest[1..];
                }
            }
            Some(_) | None => return,
        }
        at.extend(rest.iter().cloned());
        self.paths.insert(at);
    }

    fn tree(&mut self, before: &[String], tree: &syn::UseTree) {
        let with = |ident: &syn::Ident| [before, &[ident.to_string()]].concat();
        match tree {
            syn::UseTree::Path(path) => self.tree(&with(&path.ident), &path.tree),
            syn::UseTree::Name(name) => self.take(&with(&name.ident)),
            syn::UseTree::Rename(name) => self.take(&with(&name.ident)),
            syn::UseTree::Glob(_) => self.take(before),
            syn::UseTree::Group(group) => {
                for tree in &group.items {
                    self.tree(before, tree);
                }
            }
        }
    }
}

fn is_for_tests(attributes: &[syn::Attribute]) -> bool {
    let is_test = |attribute: &syn::Attribute| {
        let list = attribute.meta.require_list();
        attribute.path().is_ident("cfg") && list.is_ok_and(|list| list.tokens.to_string() == "test")
    };
    attributes.iter().any(is_test)
}

impl<'ast> Visit<'ast> for Named {
    fn visit_item_mod(&mut self, item: &'ast syn::ItemMod) {
        if item.content.is_none() || is_for_tests(&item.attrs) {
            return;
        }
        self.module.push(item.ident.to_string());
        visit::visit_item_mod(self, item);
        self.module.pop();
    }

    fn visit_item_use(&mut self, item: &'ast syn::ItemUse) {
        if !is_for_tests(&item.attrs) {
            self.tree(&[], &item.tree);
        }
    }

    // `pub(super)` imports nothing.
    fn visit_visibility(&mut self, _: &'ast syn::Visibility) {}

    fn visit_path(&mut self, path: &'ast syn::Path) {
        let all: Vec<String> = path.segments.iter().map(|s| s.ident.to_string()).collect();
        self.take(&all);
        visit::visit_path(self, path);
    }
}

/// Every file below `folder` with its module, those of tests left out.
fn files(folder: &Path, below: &[String], found: &mut BTreeMap<Module, PathBuf>) {
    let entries = fs::read_dir(folder).expect("a folder");
    for path in entries.map(|entry| entry.expect("an entry").path()) {
        let stem = path.file_stem().and_then(|stem| stem.to_str());
        let name = stem.expect("a name").to_owned();
        if path.is_dir() {
            files(&path, &[below, &[name]].concat(), found);
        } else if path.extension().is_some_and(|end| end == "rs") && !name.ends_with("_tests") {
            let is_root = below.is_empty() && ["lib", "main"].contains(&name.as_str());
            let module = if is_root {
                Vec::new()
            } else {
                [below, &[name]].concat()
            };
            found.insert(module, path);
        }
    }
}

/// Which file imports which.
fn imports(files: &BTreeMap<Module, PathBuf>) -> BTreeMap<Module, BTreeSet<Module>> {
    let of = |(module, path): (&Module, &PathBuf)| {
        let text = fs::read_to_string(path).expect("a source");
        let file = syn::parse_file(&text).expect("Rust");
        let (paths, module) = (BTreeSet::new(), module.clone());
        let mut named = Named { module, paths };
        named.visit_file(&file);
        let own = named.module;
        let file_of = |mut path: Vec<String>| {
            while !path.is_empty() && !files.contains_key(&path) {
                path.pop();
            }
            (!path.is_empty() && path != own).then_some(path)
        };
        let used = named.paths.into_iter().filter_map(file_of).collect();
        (own.clone(), used)
    };
    files.iter().map(of).collect()
}

/// The circles, largest first: two files are in one where each reaches the other.
fn circles(edges: &BTreeMap<Module, BTreeSet<Module>>) -> Vec<BTreeSet<Module>> {
    let reached = |from: &Module| {
        let (mut seen, mut open) = (BTreeSet::new(), Vec::from([from]));
        while let Some(at) = open.pop() {
            let new = edges[at].iter().filter(|to| seen.insert((*to).clone()));
            open.extend(new);
        }
        seen
    };
    let all: BTreeMap<&Module, BTreeSet<Module>> = edges.keys().map(|m| (m, reached(m))).collect();
    let circle = |of: &Module| {
        let back = all[of].iter().filter(|to| all[*to].contains(of));
        back.cloned().collect::<BTreeSet<Module>>()
    };
    let found: BTreeSet<BTreeSet<Module>> = edges.keys().map(circle).collect();
    let mut found: Vec<_> = found.into_iter().filter(|all| all.len() > 1).collect();
    found.sort_by_key(|circle| usize::MAX - circle.len());
    found
}

fn circles_below(source: &Path) -> Vec<BTreeSet<Module>> {
    let mut found = BTreeMap::new();
    files(source, &[], &mut found);
    circles(&imports(&found))
}

#[test]
fn no_circle_of_imports_is_larger_than_three_files() {
    for name in [
        "domain", "hardware", "journal", "kiosk", "plan", "share", "view",
    ] {
        let found = circles_below(&acceptance::top().join("app").join(name).join("src"));
        let found: Vec<_> = found.iter().filter(|all| all.len() > MOST).collect();
        let words = |circle: &BTreeSet<Module>| {
            let names: Vec<String> = circle.iter().map(|module| module.join("::")).collect();
            format!("{} files: {}", names.len(), names.join(", "))
        };
        let told: Vec<String> = found.iter().map(|circle| words(circle)).collect();
        assert!(found.is_empty(), "{name}: {}", told.join("\n"));
    }
}

/// A crate with a circle of four by paths, groups and `super`, whose tests and roots make none.
#[test]
fn a_circle_is_found_and_tests_make_none() {
    let folder = tempfile::tempdir().expect("a folder");
    let write = |name: &str, text: &str| {
        let path = folder.path().join(name);
        fs::create_dir_all(path.parent().expect("a folder")).expect("made");
        fs::write(path, text).expect("written");
    };
    write("lib.rs", "mod a; mod b; mod c; pub use a::A;");
    write("a.rs", "use crate::b::B; pub struct A;");
    write("b.rs", "mod d; use crate::{c::{C, D as E}}; pub struct B;");
    write("b/d.rs", "pub fn f() { crate::a::A; }");
    write(
        "c.rs",
        "fn f() { let _: crate::b::d::X; } #[cfg(test)] mod t { use super::super::a::A; }",
    );
    let circle = |names: &[&str]| -> BTreeSet<Module> {
        let module = |name: &&str| name.split("::").map(str::to_owned).collect();
        names.iter().map(module).collect()
    };
    assert_eq!(
        circles_below(folder.path()),
        [circle(&["a", "b", "b::d", "c"])]
    );
    write("b/d.rs", "pub(super) fn f() {}");
    assert!(circles_below(folder.path()).is_empty());
}
