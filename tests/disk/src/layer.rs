//! SQLite's own file layer with four of its functions put in front: write, sync, cut, delete.
//!
//! Every other function is SQLite's own, called with the same file.
use crate::world;
use crate::world::Answer;
use rusqlite::ffi;
use std::collections::BTreeMap;
use std::ffi::{CStr, OsStr, c_char, c_int, c_void};
use std::os::unix::ffi::OsStrExt as _;
use std::path::PathBuf;
use std::sync::{Mutex, Once, PoisonError};

/// Addresses, so that they may be kept in a static.
#[derive(Default)]
struct Tables {
    /// By the address of an open file: its path, and the address of SQLite's own table for it.
    files: BTreeMap<usize, (PathBuf, usize)>,
    /// By the address of SQLite's own table: ours.
    ours: BTreeMap<usize, usize>,
    /// SQLite's own layer.
    real: usize,
}

static TABLES: Mutex<Tables> = Mutex::new(Tables {
    files: BTreeMap::new(),
    ours: BTreeMap::new(),
    real: 0,
});
static REGISTERED: Once = Once::new();

fn tables<T>(with: impl FnOnce(&mut Tables) -> T) -> T {
    with(&mut TABLES.lock().unwrap_or_else(PoisonError::into_inner))
}

/// Makes this the layer of all connections opened from now on.
pub(crate) fn register() {
    REGISTERED.call_once(|| {
        // SAFETY: SQLite's default layer lives as long as the process, and so does our copy.
        let registered = unsafe {
            let real = ffi::sqlite3_vfs_find(std::ptr::null());
            assert!(!real.is_null(), "SQLite has a layer of its own");
            tables(|tables| tables.real = real as usize);
            let mut ours = *real;
            ours.zName = c"disk".as_ptr();
            ours.pNext = std::ptr::null_mut();
            ours.xOpen = Some(open);
            ours.xDelete = Some(delete);
            ffi::sqlite3_vfs_register(Box::into_raw(Box::new(ours)), 1)
        };
        assert_eq!(registered, ffi::SQLITE_OK);
    });
}

fn real() -> *mut ffi::sqlite3_vfs {
    tables(|tables| tables.real) as *mut ffi::sqlite3_vfs
}

/// # Safety
/// `name` is null or a C string.
unsafe fn path_of(name: *const c_char) -> PathBuf {
    if name.is_null() {
        return PathBuf::new();
    }
    // SAFETY: told above.
    let bytes = unsafe { CStr::from_ptr(name) }.to_bytes();
    PathBuf::from(OsStr::from_bytes(bytes))
}

fn code(answer: Answer, dead: c_int) -> c_int {
    match answer {
        Answer::Go => ffi::SQLITE_OK,
        Answer::Dead => dead,
        Answer::Full => ffi::SQLITE_FULL,
        Answer::ReadOnly => ffi::SQLITE_READONLY,
    }
}

unsafe extern "C" fn open(
    _: *mut ffi::sqlite3_vfs,
    name: ffi::sqlite3_filename,
    file: *mut ffi::sqlite3_file,
    flags: c_int,
    out: *mut c_int,
) -> c_int {
    // SAFETY: SQLite calls this as it would its own layer, whose room for a file is as large.
    unsafe {
        let path = path_of(name);
        if world().open(&path) != Answer::Go {
            (*file).pMethods = std::ptr::null();
            return ffi::SQLITE_CANTOPEN;
        }
        let real = real();
        let Some(open) = (*real).xOpen else {
            return ffi::SQLITE_CANTOPEN;
        };
        let opened = open(real, name, file, flags, out);
        if opened == ffi::SQLITE_OK && !(*file).pMethods.is_null() {
            let own = (*file).pMethods;
            let ours = tables(|tables| {
                tables.files.insert(file as usize, (path, own as usize));
                *tables.ours.entry(own as usize).or_insert_with(|| {
                    let mut ours = *own;
                    ours.xWrite = Some(write);
                    ours.xSync = Some(sync);
                    ours.xTruncate = Some(cut);
                    ours.xClose = Some(close);
                    Box::into_raw(Box::new(ours)) as usize
                })
            });
            (*file).pMethods = ours as *const ffi::sqlite3_io_methods;
        }
        opened
    }
}

/// The file's path and SQLite's own functions for it.
fn of(file: *mut ffi::sqlite3_file) -> (PathBuf, *const ffi::sqlite3_io_methods) {
    tables(|tables| {
        let (path, own) = &tables.files[&(file as usize)];
        (path.clone(), *own as *const ffi::sqlite3_io_methods)
    })
}

unsafe extern "C" fn write(
    file: *mut ffi::sqlite3_file,
    from: *const c_void,
    amount: c_int,
    at: ffi::sqlite3_int64,
) -> c_int {
    let (path, own) = of(file);
    let (Ok(length), Ok(place)) = (usize::try_from(amount), usize::try_from(at)) else {
        return ffi::SQLITE_IOERR_WRITE;
    };
    // SAFETY: SQLite gives so many bytes; the functions are its own.
    unsafe {
        let bytes = std::slice::from_raw_parts(from.cast::<u8>(), length);
        let answer = world().write(&path, place, bytes);
        match (answer, (*own).xWrite) {
            (Answer::Go, Some(write)) => write(file, from, amount, at),
            (answer, _) => code(answer, ffi::SQLITE_IOERR_WRITE),
        }
    }
}

unsafe extern "C" fn sync(file: *mut ffi::sqlite3_file, _: c_int) -> c_int {
    // The machine's own disk need not be waited for: this one says what is safe.
    let (path, _) = of(file);
    code(world().sync(&path), ffi::SQLITE_IOERR_FSYNC)
}

unsafe extern "C" fn cut(file: *mut ffi::sqlite3_file, size: ffi::sqlite3_int64) -> c_int {
    let (path, own) = of(file);
    let Ok(length) = usize::try_from(size) else {
        return ffi::SQLITE_IOERR_TRUNCATE;
    };
    let answer = world().length(&path, length);
    // SAFETY: the functions are SQLite's own.
    unsafe {
        match (answer, (*own).xTruncate) {
            (Answer::Go, Some(cut)) => cut(file, size),
            (answer, _) => code(answer, ffi::SQLITE_IOERR_TRUNCATE),
        }
    }
}

unsafe extern "C" fn close(file: *mut ffi::sqlite3_file) -> c_int {
    let (_, own) = of(file);
    tables(|tables| tables.files.remove(&(file as usize)));
    // SAFETY: the functions are SQLite's own.
    unsafe { (*own).xClose.map_or(ffi::SQLITE_OK, |close| close(file)) }
}

unsafe extern "C" fn delete(_: *mut ffi::sqlite3_vfs, name: *const c_char, dir: c_int) -> c_int {
    // SAFETY: SQLite gives a C string; the function is its own.
    unsafe {
        let path = path_of(name);
        let answer = world().delete(&path);
        let real = real();
        match (answer, (*real).xDelete) {
            (Answer::Go, Some(delete)) => delete(real, name, dir),
            (answer, _) => code(answer, ffi::SQLITE_IOERR_DELETE),
        }
    }
}
