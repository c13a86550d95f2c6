package org.tugtest.goal;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugin.logging.Log;
import org.jspecify.annotations.Nullable;
import org.tugtest.files.DiskSink;
import org.tugtest.files.FileText;
import org.tugtest.files.OneFile;
import org.tugtest.files.SafeWrite;
import org.tugtest.read.ReadHarness;
import org.tugtest.read.SourceFiles;
import org.tugtest.read.SourceFiles.Content;
import org.tugtest.report.PrintableText;
import org.tugtest.text.Nearest;
import org.tugtest.write.CellProblem;
import org.tugtest.write.SheetExport;
import org.tugtest.write.SheetKind;
import org.tugtest.write.SheetMerge;
import org.tugtest.write.SheetMergeResult;

/** The tables of one root, out to a spreadsheet and back. */
record Sheets(Surroundings around, Workplace place, SourceFiles files, ReadHarness read, Log log) {
  private static final String FOLDER = "sheet/";

  /** The sheets of a root; which one may be left out where there is only one. */
  static Sheets of(Surroundings around, Workplace place, @Nullable String root, Log log)
      throws MojoExecutionException {
    Roots roots = Roots.of(around, place, log);
    List<String> names = roots.read().stream().map(one -> one.harness().root()).toList();
    if (root == null || root.isBlank()) {
      if (names.size() > 1) {
        throw new MojoExecutionException(
            "there are "
                + names.size()
                + " roots ("
                + String.join(", ", names)
                + "); say which: -Dtugtest.sheet.root="
                + names.get(0));
      }
      return new Sheets(around, place, roots.files(), roots.read().get(0), log);
    }
    for (ReadHarness one : roots.read()) {
      if (one.harness().root().equals(root)) {
        return new Sheets(around, place, roots.files(), one, log);
      }
    }
    throw new MojoExecutionException(
        "tugtest.sheet.root is \""
            + root
            + "\", but there is no such root; "
            + Nearest.question(root, names));
  }

  /** Which table a file holds, by its name. */
  static SheetKind kindOf(String file) throws MojoExecutionException {
    String name = String.valueOf(Path.of(file).getFileName()).toLowerCase(Locale.ROOT);
    for (SheetKind kind : SheetKind.values()) {
      if (name.startsWith(kind.name().toLowerCase(Locale.ROOT)) && name.endsWith(".csv")) {
        return kind;
      }
    }
    throw new MojoExecutionException(
        "tugtest.sheet.from is \""
            + file
            + "\"; the name of the table begins with wires, connectors or devices and ends in"
            + " .csv");
  }

  /**
   * Writes all tables below the output folder.
   *
   * @return the files, as a person would type them
   */
  List<String> write() throws MojoExecutionException {
    if (!read.unread().isEmpty()) {
      throw new MojoExecutionException(
          String.join(", ", read.unread())
              + " cannot be read, so no table was written; mend what "
              + around.goals()
              + "check says first");
    }
    List<String> written = new ArrayList<>();
    try (DiskSink sink = new DiskSink(place.output())) {
      for (SheetKind kind : SheetKind.values()) {
        try (OutputStream out = sink.open(FOLDER + kind.fileName())) {
          out.write(FileText.encode(SheetExport.write(kind, read)));
        }
        written.add(around.show(place.output().resolve(FOLDER + kind.fileName())));
      }
      sink.keep();
    } catch (IOException failed) {
      throw new MojoExecutionException(
          "the tables cannot be written to " + around.show(place.output()), failed);
    }
    return written;
  }

  /** Merges an edited table back; a file with a problem is left alone and fails the goal. */
  void merge(SheetKind kind, String from, @Nullable String newRows, boolean remove)
      throws MojoExecutionException, MojoFailureException {
    if (!read.problems().isEmpty()) {
      throw new MojoFailureException(
          "the files have "
              + read.problems().size()
              + (read.problems().size() == 1 ? " problem" : " problems")
              + " as written, so nothing was merged; mend what "
              + around.goals()
              + "check says first");
    }
    SheetMergeResult result =
        SheetMerge.merge(kind, table(from), read, new SheetMerge.Options(newRows, remove));
    for (CellProblem problem : result.problems()) {
      log.error(PrintableText.of(from + ": " + problem.shown()));
    }
    for (Map.Entry<String, String> file : result.files().entrySet()) {
      replace(file.getKey(), file.getValue());
    }
    result.changed().forEach(thing -> log.info("changed " + PrintableText.of(thing)));
    result.added().forEach(thing -> log.info("added " + PrintableText.of(thing)));
    String fate =
        remove
            ? " is no longer in the table and was taken out"
            : " is no longer in the table; it stays (-Dtugtest.sheet.remove takes it out)";
    result.missing().forEach(thing -> log.warn(PrintableText.of(thing) + fate));
    log.info(
        result.files().isEmpty()
            ? "no file changed"
            : "wrote " + String.join(", ", result.files().keySet()));
    if (!result.problems().isEmpty()) {
      throw new MojoFailureException(
          result.problems().size()
              + (result.problems().size() == 1 ? " cell" : " cells")
              + " could not be merged; mend what is said above and run sheet again");
    }
  }

  private byte[] table(String from) throws MojoExecutionException {
    Path file = around.resolve(from);
    try {
      return OneFile.read(file);
    } catch (IOException failed) {
      throw new MojoExecutionException(
          around.show(file) + " cannot be read: " + failed.getMessage(), failed);
    }
  }

  private void replace(String path, String text) throws MojoExecutionException {
    Path file = place.folders().harness().resolve(path).normalize();
    try {
      if (files.open(path) instanceof Content.Bytes was) {
        SafeWrite.replace(file, was.bytes(), FileText.encode(text));
      } else {
        SafeWrite.create(file, FileText.encode(text));
      }
    } catch (IOException failed) {
      throw new MojoExecutionException(String.valueOf(failed.getMessage()), failed);
    }
  }
}
