package org.tugtest.files;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.Arrays;

/**
 * Writes a person's files: beside their place first, then moved, so that no half file is ever seen;
 * and never over anything that was not read.
 */
public final class SafeWrite {
  private static final int TRIES = 100;

  private SafeWrite() {}

  /**
   * Writes a file that must not be there yet.
   *
   * @throws IOException when it is there, or cannot be written; the message is a whole sentence
   */
  public static void create(Path file, byte[] content) throws IOException {
    if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      throw alreadyThere(file);
    }
    makeFolder(parentOf(file));
    Path beside = write(file, content);
    try {
      Files.move(beside, file);
    } catch (FileAlreadyExistsException came) {
      throw alreadyThere(file);
    } finally {
      Files.deleteIfExists(beside);
    }
  }

  /**
   * Writes over a file that was read.
   *
   * @param read what it held when it was read
   * @throws IOException when it holds something else by now, is no plain file, or cannot be
   *     written; the message is a whole sentence
   */
  public static void replace(Path file, byte[] read, byte[] content) throws IOException {
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      throw new IOException(file + " is no plain file any more; nothing was written");
    }
    Path beside = write(file, content);
    try {
      keepPermissions(file, beside);
      if (!Arrays.equals(Files.readAllBytes(file), read)) {
        throw new IOException(
            file + " was changed by something else since it was read; nothing was written");
      }
      moveOver(beside, file);
    } finally {
      Files.deleteIfExists(beside);
    }
  }

  static void moveOver(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException twoSteps) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  static Path parentOf(Path file) throws IOException {
    Path parent = file.toAbsolutePath().getParent();
    if (parent == null) {
      throw new IOException(file + " is no file");
    }
    return parent;
  }

  /** Makes an empty file with a name of its own in the folder of {@code file}. */
  static Path freeNameBeside(Path file) throws IOException {
    Path parent = parentOf(file);
    for (int i = 0; i < TRIES; i++) {
      Path beside = parent.resolve("." + file.getFileName() + "." + i + ".part");
      if (make(beside)) {
        return beside;
      }
    }
    throw new IOException(
        "too many files named ." + file.getFileName() + ".N.part in " + parent + "; delete them");
  }

  private static boolean make(Path file) throws IOException {
    try {
      Files.createFile(file);
      return true;
    } catch (FileAlreadyExistsException taken) {
      return false;
    } catch (IOException failed) {
      throw new IOException(
          "nothing can be written to "
              + file.getParent()
              + ": "
              + DiskFiles.reason(failed)
              + "; make the folder writable",
          failed);
    }
  }

  private static Path write(Path file, byte[] content) throws IOException {
    Path beside = freeNameBeside(file);
    try {
      return Files.write(beside, content, StandardOpenOption.TRUNCATE_EXISTING);
    } catch (IOException failed) {
      Files.deleteIfExists(beside);
      throw new IOException(file + " cannot be written: " + DiskFiles.reason(failed), failed);
    }
  }

  /** Makes a folder and those above it. */
  static void makeFolder(Path folder) throws IOException {
    try {
      Files.createDirectories(folder);
    } catch (IOException failed) {
      throw new IOException(
          "the folder " + folder + " cannot be made: " + DiskFiles.reason(failed), failed);
    }
  }

  private static void keepPermissions(Path from, Path to) throws IOException {
    PosixFileAttributeView view = Files.getFileAttributeView(from, PosixFileAttributeView.class);
    if (view != null) {
      Files.setPosixFilePermissions(to, view.readAttributes().permissions());
    }
  }

  private static IOException alreadyThere(Path file) {
    return new IOException(
        file + " is there already and was not read; nothing was written. Give another name.");
  }
}
