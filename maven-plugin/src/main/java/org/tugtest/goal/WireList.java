package org.tugtest.goal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.logging.Log;
import org.jspecify.annotations.Nullable;
import org.tugtest.files.FileText;
import org.tugtest.files.OneFile;
import org.tugtest.files.SafeWrite;
import org.tugtest.report.PrintableText;
import org.tugtest.text.Problem;
import org.tugtest.write.Unclear;
import org.tugtest.write.WireListImport;
import org.tugtest.write.WireListResult;

/** A list in a spreadsheet and the harness files that are made of it. */
record WireList(Surroundings around, Workplace place, Log log) {
  private static final int MOST_LINES = 100;

  /**
   * Makes the files; none of them may be there yet.
   *
   * @return what was made, as a person would type it
   */
  List<String> make(
      String csv, @Nullable String columns, @Nullable String name, @Nullable String title)
      throws MojoExecutionException {
    Path list = around.resolve(csv);
    String root = named(list, name) + ".harness.json";
    String map = columns == null ? null : text(around.resolve(columns));
    WireListResult result =
        WireListImport.read(
            around.show(list), bytes(list), new WireListImport.Options(root, title, map));
    if (result instanceof WireListResult.Refused refused) {
      throw new MojoExecutionException(
          sentences(refused.problems())
              + (map == null
                  ? " A file with such a map is named by -Dtugtest.csv.columns=FILE."
                  : ""));
    }
    if (!(result instanceof WireListResult.Imported imported)) {
      throw new AssertionError(result);
    }
    Map<Path, String> files = new LinkedHashMap<>();
    imported
        .files()
        .forEach((path, text) -> files.put(place.folders().harness().resolve(path), text));
    refuseThoseThere(files);
    tell(list, imported);
    List<String> made = new ArrayList<>();
    try {
      for (Map.Entry<Path, String> file : files.entrySet()) {
        SafeWrite.create(file.getKey(), FileText.encode(file.getValue()));
        made.add(around.show(file.getKey()));
      }
    } catch (IOException failed) {
      throw new MojoExecutionException(String.valueOf(failed.getMessage()), failed);
    }
    return made;
  }

  private void tell(Path list, WireListResult.Imported imported) throws MojoExecutionException {
    log.info(
        around.show(list)
            + ": "
            + imported.wires()
            + (imported.wires() == 1 ? " wire, " : " wires, ")
            + imported.encoding()
            + ", cells apart by "
            + (imported.separator() == '\t' ? "tab" : String.valueOf(imported.separator())));
    imported.columns().forEach(column -> log.info("  " + PrintableText.of(column)));
    List<String> unclear =
        imported.unclear().stream().map(Unclear::shown).map(PrintableText::of).toList();
    unclear.stream().limit(MOST_LINES).forEach(line -> log.warn(around.show(list) + ": " + line));
    if (unclear.isEmpty()) {
      log.info("nothing was unclear");
      return;
    }
    Path kept = place.output().resolve("from-csv.txt");
    try {
      Files.createDirectories(place.output());
      Files.write(kept, FileText.encode(String.join("\n", unclear) + "\n"));
    } catch (IOException failed) {
      throw new MojoExecutionException("cannot write " + around.show(kept), failed);
    }
    int more = unclear.size() - MOST_LINES;
    log.warn(
        (more > 0 ? "and " + more + " more; all " : "all of it ")
            + "that was unclear is listed in "
            + around.show(kept));
  }

  private void refuseThoseThere(Map<Path, String> files) throws MojoExecutionException {
    List<String> there = files.keySet().stream().filter(Files::exists).map(around::show).toList();
    if (!there.isEmpty()) {
      throw new MojoExecutionException(
          String.join(", ", there)
              + (there.size() == 1 ? " is" : " are")
              + " there already and nothing was written over; give another name with"
              + " -Dtugtest.csv.name=NAME, or move what is there");
    }
  }

  private String named(Path list, @Nullable String name) throws MojoExecutionException {
    if (name != null && !name.isBlank()) {
      String given = name.strip().replaceFirst("\\.harness\\.json$", "");
      if (!given.matches("[A-Za-z0-9][A-Za-z0-9._-]*")) {
        throw new MojoExecutionException(
            "tugtest.csv.name is \"" + given + "\"; it takes letters, digits, - and _");
      }
      return given;
    }
    String file = String.valueOf(list.getFileName());
    String stem = file.replaceFirst("(?i)\\.(csv|txt|tsv)$", "").toLowerCase(Locale.ROOT);
    String plain = stem.replaceAll("[^a-z0-9]+", "-").replaceAll("^-+|-+$", "");
    return plain.isEmpty() ? "wires" : plain;
  }

  private byte[] bytes(Path file) throws MojoExecutionException {
    try {
      return OneFile.read(file);
    } catch (IOException failed) {
      throw new MojoExecutionException(
          around.show(file) + " cannot be read: " + failed.getMessage(), failed);
    }
  }

  private String text(Path file) throws MojoExecutionException {
    return FileText.decode(bytes(file))
        .orElseThrow(() -> new MojoExecutionException(around.show(file) + " is not UTF-8"));
  }

  private static String sentences(List<Problem> problems) {
    return problems.stream()
        .map(problem -> problem.message() + " " + problem.remedy())
        .collect(Collectors.joining(" "));
  }
}
