package org.tugtest.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tugtest.base.Against;
import org.tugtest.check.RuleCatalog;
import org.tugtest.check.Selection;
import org.tugtest.compare.Age;
import org.tugtest.files.Choice;
import org.tugtest.files.DiskFiles;
import org.tugtest.files.Folders;
import org.tugtest.files.HarnessFiles;
import org.tugtest.read.HarnessReader;
import org.tugtest.read.ReadLimits;
import org.tugtest.report.Baseline;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.Revision;

class FleetTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final Progress SILENT = new Progress(line -> {}, System::nanoTime);
  private static final String WIRE = "\"%s\": {\"from\": \"%s\", \"to\": \"%s\", \"areaMm2\": 1.0}";
  @TempDir Path now;
  @TempDir Path before;

  /** Two roots with a shared loom; the second doubles a cavity of it. */
  @BeforeEach
  void twoRoots() throws IOException {
    for (Path folder : List.of(now, before)) {
      write(folder, "nose.json", wire("N1", "X1:1", "X2:1"));
      write(folder, "a.harness.json", wire("A1", "X1:2", "X3:1"), "nose.json");
      write(folder, "b.harness.json", wire("B1", "X1:1", "X3:2"), "nose.json");
    }
  }

  @Test
  void threadsChangeNoResult() throws Exception {
    for (int i = 0; i < 12; i++) {
      write(now, "r" + i + ".harness.json", wire("R" + i, "X1:" + i % 3, "X4:1"), "nose.json");
    }

    assertThat(told(check(now, 1))).isEqualTo(told(check(now, 4)));
  }

  @Test
  void resultsComeInTheOrderOfTheRoots() throws Exception {
    assertThat(check(now, 2))
        .extracting(HarnessReport::root)
        .containsExactly("a.harness.json", "b.harness.json");
    assertThat(rules(check(now, 2).get(1))).contains("cavity-doubled");
    assertThat(fleet(files(now), 2).check(List.of(), true, List.of(), SILENT)).isEmpty();
  }

  @Test
  void aFileThatNoRootUsesIsAFindingOfTheFirstWhenAllRootsAreChecked() throws Exception {
    write(now, "idle.json", "");

    assertThat(rules(check(now, 2).get(0))).contains("file-unused");
    HarnessReport part =
        fleet(files(now), 2).check(List.of("a.harness.json"), false, List.of(), SILENT).get(0);
    assertThat(rules(part)).doesNotContain("file-unused");
  }

  @Test
  void brokenAnnouncementsAreFindings() throws Exception {
    Files.createDirectories(now.resolve("changes"));
    Files.writeString(now.resolve("changes/x.json"), "{\"format\": 1, \"chnges\": {}}");
    AnnouncedChanges announced = AnnouncedChanges.of(files(now), ReadLimits.STANDARD);

    assertThat(announced.changes()).isEmpty();
    HarnessReport first =
        fleet(files(now), 2)
            .check(List.of("a.harness.json"), false, announced.problems(), SILENT)
            .get(0);
    assertThat(rules(first)).contains("shape-wrong");
  }

  @Test
  void announcementsAreReadWhicheverRootsAreChosen() throws Exception {
    Files.createDirectories(now.resolve("changes"));
    Files.writeString(
        now.resolve("changes/x.json"),
        "{\"format\": 1, \"changes\": {\"lamp\": {\"nets\": [\"X1:1\"], \"reason\": \"r\"}}}");
    HarnessFiles chosen =
        DiskFiles.of(
            new Folders(now, List.of(), List.of()),
            Choice.of(List.of("a*"), List.of()),
            ReadLimits.STANDARD);

    assertThat(AnnouncedChanges.of(chosen, ReadLimits.STANDARD).changes())
        .extracting(change -> change.id())
        .containsExactly("lamp");
  }

  @Test
  void eachRootIsHeldAgainstItsOwnBase() throws Exception {
    write(now, "a.harness.json", wire("A1", "X1:1", "X3:1"), "nose.json");

    List<HarnessReport> held = hold(null);

    assertThat(ages(held.get(0), "cavity-doubled")).containsExactly(Age.NEW);
    assertThat(ages(held.get(1), "cavity-doubled")).containsExactly(Age.KNOWN);
    assertThat(baseline(held.get(0)).comparison().circuits().same()).isFalse();
    assertThat(baseline(held.get(1)).comparison().circuits().same()).isTrue();
    assertThat(baseline(held.get(0)).label()).isEqualTo("before");
  }

  @Test
  void aRootThatTheBaseLacksIsAllNew() throws Exception {
    write(now, "c.harness.json", wire("C1", "X1:1", "X3:1"), "nose.json");
    write(now, "d.harness.json", wire("D1", "X1:3", "X3:1"), "nose.json");

    List<HarnessReport> held = hold(null);

    assertThat(baseline(held.get(2)).present()).isFalse();
    assertThat(ages(held.get(2), "cavity-doubled")).containsExactly(Age.NEW);
    assertThat(baseline(held.get(1)).present()).isTrue();
  }

  @Test
  void aRenamedRootIsHeldAgainstWhatItWas() throws Exception {
    Files.move(now.resolve("b.harness.json"), now.resolve("c.harness.json"));

    List<HarnessReport> held = hold(null);

    assertThat(held.get(1).root()).isEqualTo("c.harness.json");
    assertThat(ages(held.get(1), "cavity-doubled")).containsExactly(Age.KNOWN);
  }

  @Test
  void oneFileAsBaseServesOneRootAlone() throws Exception {
    assertThatThrownBy(() -> hold("a.harness.json"))
        .isInstanceOf(IOException.class)
        .hasMessageStartingWith("tugtest.base names one file, and there are 2 roots; choose one");
    Files.delete(now.resolve("b.harness.json"));

    assertThat(baseline(hold("b.harness.json").get(0)).comparison().changes()).isNotEmpty();
  }

  @Test
  void againstNothingAllIsNew() throws Exception {
    List<HarnessReport> held = baselines().holdAgainstNothing(check(now, 2));

    assertThat(held).hasSize(2).allMatch(harness -> !baseline(harness).present());
    assertThat(ages(held.get(1), "cavity-doubled")).containsExactly(Age.NEW);
  }

  private List<HarnessReport> hold(@org.jspecify.annotations.Nullable String root)
      throws IOException, InterruptedException {
    Against.Side side = new Against.Side("before", files(before), null, root);
    return baselines().hold(check(now, 2), new Against.Sides(side));
  }

  private Baselines baselines() throws IOException {
    Revision revision = new Revision(null, true, DAY, "the test");
    return new Baselines(fleet(files(now), 2), revision, List.of(), 0, SILENT);
  }

  private static List<HarnessReport> check(Path folder, int threads)
      throws IOException, InterruptedException {
    HarnessFiles files = files(folder);
    List<String> roots = new HarnessReader(files, ReadLimits.STANDARD).roots();
    return fleet(files, threads).check(roots, true, List.of(), SILENT);
  }

  private static Fleet fleet(HarnessFiles files, int threads) {
    HarnessReader reader = new HarnessReader(files, ReadLimits.STANDARD);
    return new Fleet(reader, RuleCatalog.standard(), Selection.ALL, DAY, threads);
  }

  private static HarnessFiles files(Path folder) throws IOException {
    return DiskFiles.of(new Folders(folder, List.of(), List.of()), Choice.ALL, ReadLimits.STANDARD);
  }

  private static List<String> rules(HarnessReport harness) {
    return harness.result().findings().stream().map(checked -> checked.finding().rule()).toList();
  }

  private static List<String> told(List<HarnessReport> checked) {
    return checked.stream().map(harness -> harness.root() + harness.result()).toList();
  }

  private static List<Age> ages(HarnessReport harness, String rule) {
    return harness.result().findings().stream()
        .filter(checked -> checked.finding().rule().equals(rule))
        .map(harness::age)
        .toList();
  }

  private static Baseline baseline(HarnessReport harness) {
    Baseline baseline = harness.baseline();
    assertThat(baseline).isNotNull();
    return baseline;
  }

  private static String wire(String id, String from, String to) {
    return WIRE.formatted(id, from, to);
  }

  private static void write(Path folder, String name, String wires, String... uses)
      throws IOException {
    boolean root = name.endsWith(".harness.json");
    Files.writeString(
        folder.resolve(name),
        "{\"format\": 1, "
            + (root ? "\"sketch\": true, " : "")
            + (uses.length > 0 ? "\"uses\": [\"" + String.join("\", \"", uses) + "\"], " : "")
            + "\"wires\": {"
            + wires
            + "}}\n");
  }
}
