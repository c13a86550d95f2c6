package org.tugtest.goal;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.logging.Log;
import org.jspecify.annotations.Nullable;
import org.tugtest.base.Against;
import org.tugtest.base.Ground;
import org.tugtest.base.Seen;
import org.tugtest.check.RuleCatalog;
import org.tugtest.check.Selection;
import org.tugtest.files.DiskSink;
import org.tugtest.finding.Level;
import org.tugtest.read.HarnessReader;
import org.tugtest.report.Gate;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.PrintableText;
import org.tugtest.report.Report;
import org.tugtest.report.sheets.Stamp;
import org.tugtest.report.sheets.documents.Documents;
import org.tugtest.text.Problem;

/** One run of {@code documents}, from its parameters to the folder. */
record DocumentsRun(Surroundings around, Workplace place, BaseOrder order, Log log) {
  private static final String FOLDER = "documents";

  void run(@Nullable LocalDate today) throws MojoExecutionException {
    RuleCatalog catalog = TeamRules.catalog();
    try (Ground ground = Ground.of(place.folders(), around.environment())) {
      place.refuseOutside(around, ground);
      Looking looking = new Looking(around, place, ground, log);
      Seen seen = looking.at(order, today);
      if (seen.files().paths().stream().noneMatch(HarnessReader::isRoot)) {
        throw new MojoExecutionException(looking.nothing(order));
      }
      looking.remark(seen);
      Judging judging = new Judging(around, place, catalog, Selection.ALL, 0, log);
      Against against = judging.find(ground, order, order.ofCheck());
      Report report =
          looking.report(
              seen.revision(), new Gate(Level.ERROR, 0), catalog, judging.judge(seen, against));
      refuseUnread(report);
      write(report);
    }
  }

  /** A root of which nothing could be read would give sheets with nothing on them. */
  private void refuseUnread(Report report) throws MojoExecutionException {
    List<String> roots = new ArrayList<>();
    for (HarnessReport harness : report.harnesses()) {
      if (harness.facts().unread().contains(harness.root())) {
        roots.add(harness.root());
        for (Problem problem : harness.facts().problems()) {
          if (problem.kind() == Problem.Kind.FILE_UNREADABLE) {
            log.error(
                PrintableText.of(report.shown(problem.at().get(0)) + ": " + problem.message()));
            log.error("    " + PrintableText.of(problem.remedy()));
          }
        }
      }
    }
    if (!roots.isEmpty()) {
      throw new MojoExecutionException(
          String.join(", ", roots) + " cannot be read, so no document was written");
    }
  }

  private void write(Report report) throws MojoExecutionException {
    Path folder = place.output().resolve(FOLDER);
    List<String> paths;
    int gone;
    try (DiskSink sink = new DiskSink(folder)) {
      paths = Documents.standard().write(report, sink);
      FolderContents contents = FolderContents.of(folder);
      try (OutputStream out = sink.open(FolderContents.FILE)) {
        out.write(FolderContents.text(paths).getBytes(StandardCharsets.UTF_8));
      }
      sink.keep();
      gone = contents.removeAllBut(paths);
    } catch (IOException failed) {
      throw new MojoExecutionException(
          "the documents cannot be written to " + around.show(folder) + ": " + failed.getMessage(),
          failed);
    }
    for (HarnessReport harness : report.harnesses()) {
      for (String sentence : Stamp.of(report, harness).incomplete()) {
        log.warn(PrintableText.of(harness.root() + " is not complete: " + sentence));
      }
    }
    long pages = paths.stream().filter(path -> path.endsWith(".html")).count();
    log.info(
        "wrote "
            + pages
            + " pages and "
            + (paths.size() - pages)
            + " tables to "
            + around.show(folder)
            + (gone == 0 ? "" : "; " + gone + " that no longer apply were removed"));
    log.info("open " + around.show(folder.resolve(paths.get(0))));
  }
}
