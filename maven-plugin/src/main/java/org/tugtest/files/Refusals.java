package org.tugtest.files;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Optional;
import java.util.stream.Stream;
import org.tugtest.read.ReadLimits;
import org.tugtest.read.SourceFiles;
import org.tugtest.read.SourceFiles.Content;
import org.tugtest.read.SourceFiles.Content.Refused;
import org.tugtest.text.Nearest;

/** Why a file that a harness names is not read, in the same words wherever the files are kept. */
public final class Refusals {
  private Refusals() {}

  /** Of a path that does not lead straight to a place in one of the folders; empty when it does. */
  public static Optional<Refused> ofPath(Folders folders, String path) {
    if (!plain(path)) {
      return because(
          "is no relative path with / between its names",
          "Write it relative to the file that uses it, with /.");
    }
    Path file;
    try {
      file = folders.at(path);
    } catch (InvalidPathException cannotBe) {
      return because(
          "is no path that this system knows", "Use letters, digits, - and _ in names of files.");
    }
    if (folders.holding(file).isEmpty()) {
      return because(
          "lies outside the harness folder and the library folders",
          "Move the file into one of them, or add its folder to tugtest.libraryDirectories.");
    }
    String straight = folders.pathOf(file);
    return straight.equals(path)
        ? Optional.empty()
        : because("leaves the harness folder and comes back", "Write \"" + straight + "\".");
  }

  private static Optional<Refused> because(String message, String remedy) {
    return Optional.of(new Refused(message, remedy));
  }

  private static boolean plain(String path) {
    if (path.isEmpty() || path.indexOf('\\') >= 0 || path.indexOf('\0') >= 0) {
      return false;
    }
    return Stream.of(path.split("/", -1)).noneMatch(name -> name.isEmpty() || name.equals("."));
  }

  /** Of a file that does not exist, with the nearest of {@code known}. */
  public static Content notThere(String path, Collection<String> known) {
    String near = Nearest.question(path, known);
    return new Refused(
        near.isEmpty() ? SourceFiles.MISSING : SourceFiles.MISSING + "; " + near,
        "Correct the path, or add the file.");
  }

  /** Of a file that is longer than the limits allow. */
  public static Content tooLong(String length, ReadLimits limits) {
    return new Refused(
        "is " + length + " long; at most " + limits.bytes() + " are read",
        "Split the file, and name the pieces under \"uses\".");
  }

  /** Of a symbolic link. */
  public static Content link() {
    return new Refused(
        "is a symbolic link; links are not followed",
        "Put the file itself there, or add its folder to tugtest.libraryDirectories.");
  }
}
