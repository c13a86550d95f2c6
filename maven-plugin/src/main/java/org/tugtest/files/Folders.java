package org.tugtest.files;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The folders that a harness may be read from.
 *
 * @param harness the harness folder, absolute and without {@code ..}
 * @param libraries folders of shared parts, likewise
 * @param leftOut folders inside them that are never looked into, such as that of the reports
 */
public record Folders(Path harness, List<Path> libraries, List<Path> leftOut) {

  public Folders {
    harness = harness.toAbsolutePath().normalize();
    libraries = plain(libraries);
    Path top = harness;
    leftOut = plain(leftOut).stream().filter(folder -> !top.startsWith(folder)).toList();
  }

  private static List<Path> plain(List<Path> folders) {
    return folders.stream().map(folder -> folder.toAbsolutePath().normalize()).toList();
  }

  /** All that are read from, the harness folder first. */
  public List<Path> all() {
    List<Path> all = new ArrayList<>();
    all.add(harness);
    all.addAll(libraries);
    return all;
  }

  /**
   * Whether a file there could be part of a harness by its name: JSON or CSV, inside one of the
   * folders, not left out, and no name below the folder begins with a dot.
   */
  public boolean takes(Path file) {
    Path folder = holding(file).orElse(null);
    if (folder == null || leftOut.stream().anyMatch(file::startsWith) || !named(file)) {
      return false;
    }
    for (Path name : folder.relativize(file)) {
      if (hidden(name)) {
        return false;
      }
    }
    return true;
  }

  static boolean hidden(Path file) {
    return String.valueOf(file.getFileName()).startsWith(".");
  }

  static boolean named(Path file) {
    String name = String.valueOf(file.getFileName());
    return name.endsWith(".json") || name.endsWith(".csv");
  }

  /** The innermost of them that holds {@code file}. */
  Optional<Path> holding(Path file) {
    return all().stream().filter(file::startsWith).max(Comparator.comparingInt(Path::getNameCount));
  }

  /**
   * The place that a path from the harness folder leads to, inside the folders or not.
   *
   * @throws java.nio.file.InvalidPathException when this system knows no such path
   */
  public Path at(String path) {
    return harness.resolve(path).normalize();
  }

  /** The path of a file from the harness folder, with {@code /}. */
  public String pathOf(Path file) {
    return slashed(harness.relativize(file));
  }

  /** A relative path with {@code /} between its names, on every system. */
  public static String slashed(Path relative) {
    List<String> names = new ArrayList<>();
    relative.forEach(name -> names.add(name.toString()));
    return String.join("/", names);
  }
}
