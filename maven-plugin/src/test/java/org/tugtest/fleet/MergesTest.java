package org.tugtest.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tugtest.base.Against;
import org.tugtest.base.BaseFinder;
import org.tugtest.base.Ground;
import org.tugtest.check.RuleCatalog;
import org.tugtest.check.Selection;
import org.tugtest.compare.cause.Meeting;
import org.tugtest.files.Choice;
import org.tugtest.files.Folders;
import org.tugtest.files.Scope;
import org.tugtest.git.Environment;
import org.tugtest.git.RealGit;
import org.tugtest.read.HarnessReader;
import org.tugtest.read.ReadLimits;
import org.tugtest.report.Baseline;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.Revision;

/** Two branches of a real repository, merged on the model. */
class MergesTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final Progress SILENT = new Progress(line -> {}, System::nanoTime);
  private final List<String> remarks = new ArrayList<>();
  @TempDir Path top;
  private RealGit git;

  @BeforeEach
  void base() throws IOException {
    git = RealGit.init(top);
    write("W1 X1:1 X2:1");
    git.commitAll("base");
    git.run("branch", "theirs");
    git.run("branch", "ours");
  }

  @Test
  void twoWiresThatMeetInOneCavityAreNamed() throws Exception {
    branch("ours", "W1 X1:1 X2:1", "W5 X1:3 X2:5");
    branch("theirs", "W1 X1:1 X2:1", "W6 X1:3 X2:6");

    HarnessReport merge = merged().get(0);

    assertThat(merge.facts().harness().wires()).containsOnlyKeys("W1", "W5", "W6");
    assertThat(baseline(merge).meetings())
        .filteredOn(meeting -> meeting.finding().rule().equals("cavity-doubled"))
        .extracting(Meeting::where)
        .containsExactly("cavity X1:3");
    assertThat(remarks).isEmpty();
  }

  @Test
  void whatOneSideHasAlreadyIsKnown() throws Exception {
    branch("ours", "W1 X1:1 X2:1", "W5 X1:1 X2:5");
    branch("theirs", "W1 X1:1 X2:1", "W6 X1:3 X2:6");

    HarnessReport merge = merged().get(0);

    assertThat(baseline(merge).meetings()).isEmpty();
    assertThat(merge.result().standing())
        .filteredOn(checked -> checked.finding().rule().equals("cavity-doubled"))
        .hasSize(1)
        .allMatch(checked -> merge.age(checked) == org.tugtest.compare.Age.KNOWN);
  }

  @Test
  void whatBothChangeOtherwiseIsTold() throws Exception {
    branch("ours", "W1 X1:2 X2:1");
    branch("theirs", "W1 X1:3 X2:1");

    HarnessReport merge = merged().get(0);

    assertThat(remarks)
        .containsExactly("car.harness.json: both sides change wires/W1 from; ours is taken");
    assertThat(merge.facts().harness().wires().get("W1").from()).hasToString("X1:2");
  }

  @Test
  void placesAreThoseOfTheSideThatHasTheThing() throws Exception {
    branch("ours", "W1 X1:1 X2:1", "W7 X1:7 X2:7");
    branch("theirs", "W1 X1:1 X2:1", "W6 X1:3 X2:6");

    HarnessReport merge = merged().get(0);

    assertThat(merge.facts().places().of("wires/W6").pointer()).isEqualTo("/wires/W6");
    assertThat(merge.facts().places().of("wires/W1").pointer()).isEqualTo("/wires/W1");
  }

  @Test
  void aRootOfOneSideAloneIsTakenAsItIs() throws Exception {
    git.run("checkout", "-q", "theirs");
    git.write("looms/other.harness.json", "{\"format\": 1, \"sketch\": true}\n");
    git.commitAll("other");

    assertThat(merged())
        .extracting(HarnessReport::root)
        .containsExactly("car.harness.json", "other.harness.json");
  }

  private List<HarnessReport> merged() throws IOException, InterruptedException {
    Folders folders = new Folders(top.resolve("looms"), List.of(), List.of());
    Scope scope = new Scope(folders, Choice.ALL, ReadLimits.STANDARD);
    try (Ground ground = Ground.of(folders, Environment.EMPTY)) {
      Against.Sides sides =
          new BaseFinder(ground, Environment.EMPTY, scope, top::resolve).fork("ours", "theirs");
      Against.Fork fork = sides.fork();
      assertThat(fork).isNotNull();
      Fleet fleet =
          new Fleet(
              new HarnessReader(fork.ours().files(), ReadLimits.STANDARD),
              RuleCatalog.standard(),
              Selection.ALL,
              DAY,
              2);
      List<HarnessReport> merged = new Merges(fleet, SILENT, remarks::add).judge(fork);
      Revision revision = new Revision(null, true, DAY, "the test");
      return new Baselines(fleet, revision, List.of(), 100, SILENT).hold(merged, sides);
    }
  }

  private void branch(String name, String... wires) throws IOException {
    git.run("checkout", "-q", name);
    write(wires);
    git.commitAll(name);
  }

  private void write(String... wires) throws IOException {
    StringBuilder text = new StringBuilder("{\"format\": 1, \"sketch\": true, \"wires\": {");
    String comma = "\n";
    for (String wire : wires) {
      String[] words = wire.split(" ", -1);
      text.append(comma)
          .append(
              "\"%s\": {\"from\": \"%s\", \"to\": \"%s\", \"areaMm2\": 1.0}"
                  .formatted(words[0], words[1], words[2]));
      comma = ",\n";
    }
    git.write("looms/car.harness.json", text + "\n}}\n");
  }

  private static Baseline baseline(HarnessReport harness) {
    Baseline baseline = harness.baseline();
    assertThat(baseline).isNotNull();
    return baseline;
  }
}
