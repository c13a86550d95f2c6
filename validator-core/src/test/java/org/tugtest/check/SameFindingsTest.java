package org.tugtest.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.read.HarnessReader;
import org.tugtest.read.MemoryFiles;
import org.tugtest.read.ReadLimits;
import org.tugtest.report.html.SampleCar;
import org.tugtest.rule.Example;
import org.tugtest.rule.Judged;
import org.tugtest.rule.Rule;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * The same loom written in another way has the same findings: members reordered, everything on one
 * line, entries moved to another file, ids renamed. Held on the examples of all rules and on the
 * sample with wires laid to wrong ends.
 */
class SameFindingsTest {
  /** What these say depends on how the files are written, by their purpose. */
  private static final Set<String> OF_FILES =
      Set.of("file-unreadable", "shape-wrong", "file-unused", "id-given-twice");

  private static final int WRONG_LOOMS = 3;

  /** Files and their root. */
  private record Loom(String root, Map<String, String> files) {}

  static Stream<Named<Loom>> looms() {
    List<Named<Loom>> looms = new ArrayList<>();
    for (Rule rule : RuleCatalog.standard().rules()) {
      List<String> examples = new ArrayList<>(rule.info().failing());
      examples.addAll(rule.info().passing());
      for (int i = 0; i < examples.size(); i++) {
        Example example = Example.of(examples.get(i));
        if (isWellFormed(example.files())) {
          looms.add(
              Named.of(
                  rule.info().id() + " " + (i + 1), new Loom(example.root(), example.files())));
        }
      }
    }
    for (int seed = 0; seed < WRONG_LOOMS; seed++) {
      looms.add(Named.of("sample " + seed, wrongSample(seed)));
    }
    return looms.stream();
  }

  private static boolean isWellFormed(Map<String, String> files) {
    try {
      files.values().forEach(text -> JsonMapper.shared().readTree(text));
      return true;
    } catch (JacksonException notJson) {
      return false;
    }
  }

  /** The sample with some wires ending where other wires end. */
  private static Loom wrongSample(int seed) {
    Random random = new Random(seed);
    Map<String, String> files = new LinkedHashMap<>(SampleCar.files());
    files.keySet().removeIf(path -> !path.endsWith(".json"));
    files.keySet().removeIf(path -> !path.endsWith(".json"));
    List<String> ends = new ArrayList<>();
    for (String text : files.values()) {
      JsonNode wires = JsonMapper.shared().readTree(text).path("wires");
      wires.forEach(wire -> ends.add(wire.path("to").asString()));
    }
    files.replaceAll(
        (path, text) -> {
          JsonNode tree = JsonMapper.shared().readTree(text);
          for (JsonNode wire : tree.path("wires")) {
            if (random.nextInt(20) == 0) {
              ((ObjectNode) wire).put("to", ends.get(random.nextInt(ends.size())));
            }
          }
          return tree.toPrettyString();
        });
    return new Loom(SampleCar.ROOT, files);
  }

  private static List<String> findings(Loom loom) {
    return findings(loom, UnaryOperator.identity());
  }

  private static List<String> findings(Loom loom, UnaryOperator<String> names) {
    RuleCatalog catalog = RuleCatalog.standard();
    Facts facts =
        Facts.of(
            new HarnessReader(MemoryFiles.of(loom.files()), ReadLimits.STANDARD).read(loom.root()),
            Judged.TODAY,
            catalog.known());
    CheckResult result = new Checker(catalog, Selection.ALL).check(facts);
    assertThat(result.crashes()).isEmpty();
    return result.findings().stream()
        .filter(checked -> !OF_FILES.contains(checked.finding().rule()))
        .map(checked -> text(checked, names))
        .sorted()
        .toList();
  }

  private static String text(CheckedFinding checked, UnaryOperator<String> names) {
    Finding finding = checked.finding();
    List<String> subjects =
        finding.subjects().stream().map(one -> names.apply(one.place())).sorted().toList();
    return String.join(
        " ",
        finding.rule(),
        finding.level().word(),
        subjects.toString(),
        names.apply(finding.message()),
        checked.waived() ? "waived" : "");
  }

  @ParameterizedTest
  @MethodSource("looms")
  void reorderingChangesNoFinding(Loom loom) {
    Loom other = new Loom(loom.root(), SameLoom.reordered(loom.files(), 7));
    assertThat(findings(other)).isEqualTo(findings(loom));
  }

  @ParameterizedTest
  @MethodSource("looms")
  void layoutOfTheTextChangesNoFinding(Loom loom) {
    Loom other = new Loom(loom.root(), SameLoom.onOneLine(loom.files()));
    assertThat(findings(other)).isEqualTo(findings(loom));
  }

  @ParameterizedTest
  @MethodSource("looms")
  void splittingAFileChangesNoFinding(Loom loom) {
    Loom other = new Loom(loom.root(), SameLoom.split(loom.files(), loom.root(), 11));
    assertThat(findings(other)).isEqualTo(findings(loom));
  }

  @ParameterizedTest
  @MethodSource("looms")
  void renamingChangesNoFindingButTheNames(Loom loom) {
    Set<String> ids = SameLoom.ids(loom.files());
    Loom other = new Loom(loom.root(), SameLoom.renamed(loom.files()));
    assertThat(findings(other)).isEqualTo(findings(loom, text -> SameLoom.renamed(text, ids)));
  }

  @Test
  void wrongSamplesHaveManyFindings() {
    for (int seed = 0; seed < WRONG_LOOMS; seed++) {
      assertThat(findings(wrongSample(seed))).hasSizeGreaterThan(5);
    }
  }
}
