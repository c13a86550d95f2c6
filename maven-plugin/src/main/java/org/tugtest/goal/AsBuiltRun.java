package org.tugtest.goal;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugin.logging.Log;
import org.tugtest.base.Ground;
import org.tugtest.base.Seen;
import org.tugtest.built.Acceptance;
import org.tugtest.built.Intake;
import org.tugtest.built.Refusal;
import org.tugtest.built.explain.Explanation;
import org.tugtest.check.RuleCatalog;
import org.tugtest.facts.Facts;
import org.tugtest.files.FileText;
import org.tugtest.files.Folders;
import org.tugtest.files.SafeWrite;
import org.tugtest.read.HarnessReader;
import org.tugtest.read.ReadHarness;
import org.tugtest.read.ReadLimits;
import org.tugtest.read.SourceFiles.Content;
import org.tugtest.report.AsBuiltReport;
import org.tugtest.report.AsBuiltText;
import org.tugtest.report.Gate;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.PrintableText;
import org.tugtest.report.Report;
import org.tugtest.report.Tally;

/** One run of {@code as-built}, from its parameters to the verdict. */
final class AsBuiltRun {
  private final Surroundings around;
  private final Workplace place;
  private final AsBuiltOrder order;
  private final Log log;

  AsBuiltRun(Surroundings around, Workplace place, AsBuiltOrder order, Log log) {
    this.around = around;
    this.place = place;
    this.order = order;
    this.log = log;
  }

  void run() throws MojoExecutionException, MojoFailureException {
    OutcomeFile outcome = OutcomeFile.begin(place.output());
    Gate gate = Gates.of(order.failOn());
    String day = order.today();
    LocalDate today = day == null ? null : Words.day("tugtest.today", day);
    ReportFiles files = ReportFiles.ofComparison(order.formats());
    RuleCatalog all = TeamRules.catalog();
    RuleCatalog catalog = AsBuiltReport.rules(all);
    try (Ground ground = Ground.of(place.folders(), around.environment())) {
      place.refuseOutside(around, ground);
      Seen seen =
          Seen.onDisk(
              ground, place.scope(), place.files(), today, Clock.system(ZoneId.systemDefault()));
      seen.remarks().forEach(log::warn);
      if (seen.files().paths().stream().noneMatch(HarnessReader::isRoot)) {
        throw new MojoExecutionException(place.nothingFound(around));
      }
      BuiltInput input = BuiltInput.of(seen.files(), order);
      if (input.nothing()) {
        throw new MojoExecutionException(nothingTold());
      }
      Facts plan = facts(seen, input.plan(), all);
      String asBuilt = input.asBuilt();
      Optional<Facts> built =
          asBuilt == null ? Optional.empty() : Optional.of(facts(seen, asBuilt, all));
      Intake intake = Intake.of(plan, input.records(), input.readings(), built);
      String label = "the plan, " + seen.revision().shown();
      HarnessReport harness = AsBuiltReport.harness(plan, label, intake, input.astray(), catalog);
      Path from = ground.shownFrom(place.folders(), around.base());
      Report report =
          new Report(
              around.version(),
              Folders.slashed(from.relativize(place.folders().harness())),
              seen.revision(),
              gate,
              catalog.infos(),
              List.of(harness));
      AsBuiltReport told = Objects.requireNonNull(harness.built());
      told.refused().forEach(refusal -> say(report, refusal));
      Verdict verdict = new Verdict(around, report, files.write(report, place.output()), log);
      verdict.print();
      for (Explanation explanation : told.explanations()) {
        AsBuiltText.lines(report, explanation).forEach(line -> log.info(PrintableText.of(line)));
      }
      if (order.accept()) {
        accept(plan, intake, input, seen);
      }
      refuse(told.refused());
      outcome.say(report.outcome());
      verdict.decide();
    }
  }

  private static void refuse(List<Refusal> refused) throws MojoExecutionException {
    if (!refused.isEmpty()) {
      Refusal first = refused.get(0);
      throw new MojoExecutionException(
          Tally.counted(refused.size(), "thing")
              + " told of the loom as built "
              + (refused.size() == 1 ? "does" : "do")
              + " not fit the plan; first: "
              + first.message()
              + (first.message().endsWith(".") ? " " : "; ")
              + first.remedy());
    }
  }

  private String nothingTold() {
    return "nothing is told of a loom as built: there is no *.record.json and no readings/*.csv in "
        + around.show(place.folders().harness())
        + "; write one, or name a harness file of the loom as built with -Dtugtest.asBuilt.harness";
  }

  private Facts facts(Seen seen, String root, RuleCatalog catalog) {
    ReadHarness read = new HarnessReader(seen.files(), ReadLimits.STANDARD).read(root);
    if (!read.problems().isEmpty()) {
      log.warn(
          around.show(file(root))
              + " has faults as written, so something may be missing here: "
              + around.goals()
              + "check");
    }
    return Facts.of(read, seen.revision().today(), catalog.known());
  }

  private void say(Report report, Refusal refusal) {
    log.error(
        PrintableText.of(report.shown(refusal.at()) + ": error as-built " + refusal.message()));
    log.error(PrintableText.of("    " + refusal.remedy()));
  }

  private void accept(Facts plan, Intake intake, BuiltInput input, Seen seen)
      throws MojoExecutionException {
    Acceptance acceptance = Acceptance.of(plan, intake, input.records());
    acceptance.done().forEach(line -> log.info(PrintableText.of("taken into the plan: " + line)));
    acceptance.left().forEach(line -> log.warn(PrintableText.of("not taken: " + line)));
    for (var changed : acceptance.files().entrySet()) {
      String path = changed.getKey();
      if (path.startsWith("../") || !(seen.files().open(path) instanceof Content.Bytes bytes)) {
        throw new MojoExecutionException(
            around.show(file(path))
                + " lies outside the harness folder and is only read; nothing of it was written");
      }
      try {
        SafeWrite.replace(file(path), bytes.bytes(), FileText.encode(changed.getValue()));
      } catch (IOException failed) {
        throw new MojoExecutionException(String.valueOf(failed.getMessage()), failed);
      }
      log.info("wrote " + around.show(file(path)));
    }
    if (acceptance.files().isEmpty()) {
      log.info("no accepted deviation changes the plan");
    }
  }

  private Path file(String path) {
    return place.folders().harness().resolve(path).normalize();
  }
}
