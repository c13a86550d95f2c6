package org.tugtest.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.tugtest.check.Checker;
import org.tugtest.check.RuleCatalog;
import org.tugtest.check.Selection;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Level;
import org.tugtest.read.HarnessReader;
import org.tugtest.read.MemoryFiles;
import org.tugtest.read.ReadLimits;
import org.tugtest.report.Gate;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.MemorySink;
import org.tugtest.report.Report;
import org.tugtest.report.Reports;
import org.tugtest.rule.Judged;

/** Reports on the sample car, whole and broken, and on a car of any size; for tests. */
public final class SampleCar {
  public static final String ROOT = "pebble-owl.harness.json";
  private static final Path FOLDER =
      Path.of(System.getProperty("basedir", "."), "../sample-project/src/main/harness");

  private SampleCar() {}

  /** The sample as it is. */
  public static Report whole() {
    return checked(files(), ROOT);
  }

  /** The facts of the sample as it is. */
  public static Facts facts() {
    return whole().harnesses().get(0).facts();
  }

  /** The sample with mistakes of the kinds that people make. */
  public static Report broken() {
    Map<String, String> files = files();
    String nose = "looms/nose.json";
    change(files, nose, "(\"N002\": \\{.*?\"to\": )\"[^\"]*\"", "$1\"XN-DASH:2\"");
    change(files, nose, "(\"to\": )\"IGN:30\"", "$1\"IGN:31\"");
    change(files, nose, "(\"to\": )\"XN1:3\"", "$1\"XM1:3\"");
    change(files, nose, "(\"loom\": \\{[^}]*\"evidence\": )\"[^\"]*\"", "$1\"guess\"");
    change(
        files,
        ROOT,
        "(\"waivers\": \\{)",
        """
        $1
            "ign-pin": {"rule": "cavity-unknown", "at": "wires/N006", "reason": "pin is settled with the dash maker in spring", "until": "2030-01-01"},\
        """);
    return checked(files, ROOT);
  }

  /** A sketch of so many wires, from plugs of 24 cavities to others. */
  public static Report ofWires(int wires) {
    StringBuilder json =
        new StringBuilder(
            "{\"format\": 1, \"title\": \"Long car\",\n"
                + " \"parts\": {\"housings\": {\"h24\": {\"side\": \"socket\", \"family\":"
                + " \"t1.5\", \"rows\": [");
    for (int row = 0; row < 3; row++) {
      json.append(row == 0 ? "[" : ", [");
      for (int column = 1; column <= 8; column++) {
        json.append(column == 1 ? "\"" : ", \"").append(row * 8 + column).append('"');
      }
      json.append(']');
    }
    json.append("]}}},\n \"connectors\": {\n");
    int plugs = (wires + 23) / 24;
    for (int plug = 0; plug < 2 * plugs; plug++) {
      json.append(plug == 0 ? "" : ",\n")
          .append("  \"X")
          .append(plug)
          .append("\": {\"housing\": \"h24\", \"parked\": \"capped\"}");
    }
    json.append("},\n \"wires\": {\n");
    for (int wire = 0; wire < wires; wire++) {
      json.append(wire == 0 ? "" : ",\n")
          .append("  \"W")
          .append(wire)
          .append("\": {\"from\": \"X")
          .append(2 * (wire / 24))
          .append(':')
          .append(wire % 24 + 1)
          .append("\", \"to\": \"X")
          .append(2 * (wire / 24) + 1)
          .append(':')
          .append(wire % 24 + 1)
          .append("\", \"areaMm2\": 0.5, \"colour\": \"RD/WH\", \"circuit\": \"circuit ")
          .append(wire / 3)
          .append("\"}");
    }
    return checked(Map.of(ROOT, json.append("}}\n").toString()), ROOT);
  }

  /** Checks these roots among these files with all rules. */
  public static Report checked(Map<String, String> files, String... roots) {
    RuleCatalog catalog = RuleCatalog.standard();
    List<HarnessReport> harnesses =
        Stream.of(roots)
            .map(
                root -> {
                  Facts facts =
                      Facts.of(
                          new HarnessReader(MemoryFiles.of(files), ReadLimits.STANDARD).read(root),
                          Judged.TODAY,
                          catalog.known());
                  return new HarnessReport(facts, new Checker(catalog, Selection.ALL).check(facts));
                })
            .toList();
    return new Report(
        "1.2.3",
        "src/main/harness",
        Reports.REVISION,
        new Gate(Level.ERROR, 0),
        catalog.infos(),
        harnesses);
  }

  /** The page written for a report on one root, parsed. */
  static Document page(Report report) {
    return page(written(report), "report.html");
  }

  /** One of the pages that were written, parsed. */
  static Document page(MemorySink sink, String file) {
    return Jsoup.parse(sink.text(file));
  }

  /** The files written for a report. */
  static MemorySink written(Report report) {
    MemorySink sink = new MemorySink();
    try {
      new HtmlReport().write(report, sink);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return sink;
  }

  /** The texts of the sample by path. */
  public static Map<String, String> files() {
    Map<String, String> files = new TreeMap<>();
    try (Stream<Path> paths = Files.walk(FOLDER)) {
      for (Path path : paths.filter(Files::isRegularFile).toList()) {
        files.put(FOLDER.relativize(path).toString().replace('\\', '/'), Files.readString(path));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return files;
  }

  private static void change(
      Map<String, String> files, String path, String pattern, String replacement) {
    String text = files.getOrDefault(path, "");
    String changed = Pattern.compile(pattern).matcher(text).replaceFirst(replacement);
    assertThat(changed).as("%s in %s", pattern, path).isNotEqualTo(text);
    files.put(path, changed);
  }
}
