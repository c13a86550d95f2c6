package org.tugtest.files;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.FileVisitor;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import org.tugtest.text.NaturalOrder;

/**
 * The JSON and CSV files below the folders. Folders whose name begins with a dot are left out.
 *
 * @param paths sorted, relative to the harness folder
 * @param remarks what was passed over and a person may wonder about
 */
record FolderListing(List<String> paths, List<String> remarks) {
  /** More entries than this below the folders are taken for a wrong folder. */
  private static final int MOST_ENTRIES = 200_000;

  FolderListing {
    paths = List.copyOf(paths);
    remarks = List.copyOf(remarks);
  }

  static FolderListing of(Folders folders) throws IOException {
    Walk walk = new Walk(folders);
    for (Path folder : folders.all()) {
      if (Files.isDirectory(folder)) {
        Files.walkFileTree(folder, walk);
      }
    }
    return new FolderListing(List.copyOf(walk.paths), List.copyOf(walk.remarks));
  }

  private static final class Walk extends SimpleFileVisitor<Path> implements FileVisitor<Path> {
    private final Folders folders;
    private final TreeSet<String> paths = new TreeSet<>(NaturalOrder.NATURAL);
    private final TreeSet<String> remarks = new TreeSet<>(NaturalOrder.NATURAL);
    private final List<Path> tops;
    private int entries;

    Walk(Folders folders) {
      this.folders = folders;
      this.tops = new ArrayList<>(folders.all());
    }

    @Override
    public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
      boolean top = tops.contains(folder);
      if (folders.leftOut().contains(folder)) {
        return FileVisitResult.SKIP_SUBTREE;
      }
      if (!top && attributes.isOther()) {
        notFollowed(folder);
        return FileVisitResult.SKIP_SUBTREE;
      }
      return !top && Folders.hidden(folder)
          ? FileVisitResult.SKIP_SUBTREE
          : FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
      if (++entries > MOST_ENTRIES) {
        throw new IOException(
            "there are over "
                + MOST_ENTRIES
                + " files below "
                + folders.harness()
                + "; set tugtest.harnessDirectory to the folder of the harness files");
      }
      if (attributes.isSymbolicLink() && !Folders.named(file) && Files.isDirectory(file)) {
        notFollowed(file);
      } else if (folders.takes(file)) {
        paths.add(folders.pathOf(file));
      } else {
        misnamed(file);
      }
      return FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult visitFileFailed(Path file, IOException failed) throws IOException {
      if (failed instanceof NoSuchFileException) {
        return FileVisitResult.CONTINUE;
      }
      throw new IOException(file + " cannot be listed: " + DiskFiles.reason(failed), failed);
    }

    /** Other systems do not tell the cases of letters apart, or hide the end of a name. */
    private void misnamed(Path file) {
      String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
      boolean cased = name.endsWith(".json") && !Folders.named(file);
      if ((cased || name.endsWith(".json.txt")) && !Folders.hidden(file)) {
        remarks.add(
            folders.pathOf(file)
                + " is not read; rename it so that it ends in "
                + (name.contains(".harness.json") ? ".harness.json" : ".json"));
      }
    }

    private void notFollowed(Path folder) {
      remarks.add(
          folders.pathOf(folder)
              + " is a link to another folder and is not followed; put the files themselves there,"
              + " or add the folder to tugtest.libraryDirectories");
    }
  }
}
