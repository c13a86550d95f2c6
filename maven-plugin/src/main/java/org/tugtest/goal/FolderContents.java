package org.tugtest.goal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What an earlier run wrote into a folder, so that a sheet of a loom that is no more does not stay
 * there as if it were true. What people put there themselves is left alone.
 *
 * @param earlier paths, relative to the folder, with {@code /}
 */
record FolderContents(Path folder, List<String> earlier) {
  /** Where the paths stand, one a line. */
  static final String FILE = "contents.txt";

  /** What stands in the folder by its list; nothing without one. */
  static FolderContents of(Path folder) throws IOException {
    Path list = folder.resolve(FILE);
    return Files.isRegularFile(list, LinkOption.NOFOLLOW_LINKS)
        ? new FolderContents(folder, Files.readAllLines(list, StandardCharsets.UTF_8))
        : new FolderContents(folder, List.of());
  }

  /** The list of these paths. */
  static String text(List<String> paths) {
    return String.join("\n", paths) + "\n";
  }

  /**
   * Removes what is not among these paths.
   *
   * @return how many files that were
   */
  int removeAllBut(List<String> kept) throws IOException {
    Set<String> stays = new HashSet<>(kept);
    int gone = 0;
    for (String path : earlier) {
      if (!path.isBlank() && !stays.contains(path) && remove(path)) {
        gone++;
      }
    }
    return gone;
  }

  private boolean remove(String path) throws IOException {
    try {
      Path file = folder.resolve(path).normalize();
      boolean ours =
          file.startsWith(folder)
              && !file.equals(folder)
              && Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS);
      return ours && Files.deleteIfExists(file);
    } catch (InvalidPathException edited) {
      return false;
    }
  }
}
