package org.tugtest.goal;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugin.logging.Log;
import org.tugtest.base.Ground;
import org.tugtest.base.Seen;
import org.tugtest.files.FileText;
import org.tugtest.files.SafeWrite;
import org.tugtest.read.ReadHarness;
import org.tugtest.read.SourceFiles.Content;
import org.tugtest.report.PrintableText;
import org.tugtest.text.NaturalOrder;
import org.tugtest.text.Problem;
import org.tugtest.write.Adoption;
import org.tugtest.write.AdoptionResult;
import org.tugtest.write.TidyResult;
import org.tugtest.write.TidyWriter;
import org.tugtest.write.WaiverRemoval;

/** One run of {@code tidy}: what the files held, what they shall hold, and what was in the way. */
final class TidyRun {
  private static final int NAMED = 20;
  private final Surroundings around;
  private final Workplace place;
  private final Roots roots;
  private final Log log;
  private final Map<String, byte[]> read = new TreeMap<>(NaturalOrder.NATURAL);
  private final Map<String, String> before = new TreeMap<>(NaturalOrder.NATURAL);
  private final Map<String, String> after = new TreeMap<>(NaturalOrder.NATURAL);
  private int leftAlone;

  private TidyRun(Surroundings around, Workplace place, Roots roots, Log log) {
    this.around = around;
    this.place = place;
    this.roots = roots;
    this.log = log;
  }

  /** Reads all JSON files of the harness folder. */
  static TidyRun of(Surroundings around, Workplace place, Log log) throws MojoExecutionException {
    TidyRun run = new TidyRun(around, place, Roots.of(around, place, log), log);
    run.roots.files().paths().stream()
        .filter(path -> path.endsWith(".json") && !path.startsWith("../"))
        .forEach(run::take);
    return run;
  }

  private void take(String path) {
    Content content = roots.files().open(path);
    if (content instanceof Content.Bytes bytes) {
      String text = FileText.decode(bytes.bytes()).orElse(null);
      if (text != null) {
        read.put(path, bytes.bytes());
        before.put(path, text);
        after.put(path, text);
      } else {
        leave(path, "is not UTF-8");
      }
    } else if (content instanceof Content.Refused refused) {
      leave(path, refused.message());
    }
  }

  /** Writes out what sketches imply. */
  void adopt() throws MojoFailureException {
    AdoptionResult result = Adoption.adopt(roots.read());
    if (result instanceof AdoptionResult.Refused refused) {
      refused.problems().forEach(this::say);
      throw new MojoFailureException(
          "a file cannot be read, so nothing was written; mend it and run tidy again");
    }
    if (result instanceof AdoptionResult.Adopted adopted) {
      adopted.files().forEach(this::put);
      List<String> added = adopted.added();
      added.stream().limit(NAMED).forEach(thing -> log.info("writes out " + thing));
      if (added.size() > NAMED) {
        log.info("writes out " + (added.size() - NAMED) + " more");
      }
      adopted.left().forEach(sentence -> log.warn(PrintableText.of(sentence)));
      if (added.isEmpty()) {
        log.info("no sketch implies anything that is not written");
      }
    }
  }

  private void put(String path, String text) {
    if (after.containsKey(path)) {
      after.put(path, text);
    } else {
      leave(path, "is not among the files that are tidied");
    }
  }

  /** Takes out waivers that do nothing in any root that has them. */
  void removeIdleWaivers() throws MojoExecutionException, MojoFailureException {
    for (ReadHarness root : roots.read()) {
      if (!root.unread().isEmpty()) {
        // what it says may be what a waiver of a shared file is for
        throw new MojoFailureException(
            String.join(", ", root.unread())
                + " cannot be read, so no waiver was taken out; mend it and run tidy again");
      }
    }
    Map<String, Set<String>> idle = IdleWaivers.in(roots.read(), TeamRules.catalog(), today());
    idle.forEach(
        (path, ids) -> {
          String text = after.get(path);
          if (text == null) {
            leave(path, "is not among the files that are tidied");
          } else if (WaiverRemoval.remove(path, text, ids) instanceof TidyResult.Tidied tidied) {
            ids.forEach(id -> log.info("takes out the idle waiver " + id + " of " + shown(path)));
            after.put(path, tidied.text());
          }
        });
    if (idle.isEmpty()) {
      log.info("no waiver is idle");
    }
  }

  private LocalDate today() {
    try (Ground ground = Ground.of(place.folders(), around.environment())) {
      Clock clock = Clock.system(ZoneId.systemDefault());
      return Seen.onDisk(ground, place.scope(), roots.files(), null, clock).revision().today();
    }
  }

  /** Lays all files out anew. */
  void tidy() {
    for (Map.Entry<String, String> file : after.entrySet()) {
      TidyResult result = TidyWriter.tidy(file.getKey(), file.getValue());
      if (result instanceof TidyResult.Tidied tidied) {
        file.setValue(tidied.text());
      } else if (result instanceof TidyResult.Refused refused) {
        refused.problems().forEach(this::say);
        file.setValue(before.getOrDefault(file.getKey(), file.getValue()));
        leave(file.getKey(), "is left as it is");
      }
    }
  }

  /** Writes what changed. */
  void finish(boolean dryRun) throws MojoExecutionException, MojoFailureException {
    List<String> changed = new ArrayList<>();
    for (Map.Entry<String, String> file : after.entrySet()) {
      String path = file.getKey();
      byte[] was = read.getOrDefault(path, new byte[0]);
      byte[] content = FileText.encode(file.getValue());
      if (!Arrays.equals(was, content)) {
        changed.add(path);
        if (!dryRun) {
          write(path, was, content);
        }
        log.info((dryRun ? "would tidy " : "tidied ") + shown(path));
      }
    }
    int all = read.size();
    log.info(
        changed.size()
            + " of "
            + all
            + (all == 1 ? " file " : " files ")
            + (dryRun ? "would change; nothing was written" : "changed"));
    if (leftAlone > 0) {
      throw new MojoFailureException(
          leftAlone
              + (leftAlone == 1 ? " file was" : " files were")
              + " left alone; mend what is said above and run tidy again");
    }
  }

  private void write(String path, byte[] was, byte[] content) throws MojoExecutionException {
    try {
      SafeWrite.replace(file(path), was, content);
    } catch (IOException failed) {
      throw new MojoExecutionException(String.valueOf(failed.getMessage()), failed);
    }
  }

  private void leave(String path, String why) {
    leftAlone++;
    log.error(shown(path) + " " + why);
  }

  private void say(Problem problem) {
    log.error(
        shown(problem.at().get(0).file())
            + ":"
            + problem.at().get(0).line()
            + ":"
            + problem.at().get(0).column()
            + ": "
            + PrintableText.of(problem.message())
            + " "
            + PrintableText.of(problem.remedy()));
  }

  private Path file(String path) {
    return place.folders().harness().resolve(path).normalize();
  }

  private String shown(String path) {
    return around.show(file(path));
  }
}
