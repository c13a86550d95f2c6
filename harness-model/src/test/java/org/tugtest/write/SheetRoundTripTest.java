package org.tugtest.write;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tugtest.read.HarnessReader;
import org.tugtest.read.MemoryFiles;
import org.tugtest.read.ReadHarness;
import org.tugtest.read.ReadLimits;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

class SheetRoundTripTest {
  private static final String ROOT = "car.harness.json";
  private static final JsonMapper MAPPER = JsonMapper.builder().build();
  private static final SheetMerge.Options KEEP = new SheetMerge.Options(null, false);

  /** The sample harness, in the line ends of both worlds. */
  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n"})
  void theSampleOutAndInAgainChangesNothing(String lineEnd) throws IOException {
    Path folder = Path.of("..", "sample-project", "src", "main", "harness");
    Map<String, String> files = new TreeMap<>();
    try (Stream<Path> paths = Files.walk(folder)) {
      for (Path path : (Iterable<Path>) paths.filter(Files::isRegularFile)::iterator) {
        String name = folder.relativize(path).toString().replace('\\', '/');
        files.put(name, Files.readString(path).replace("\n", lineEnd));
      }
    }
    HarnessReader reader = new HarnessReader(MemoryFiles.of(files), ReadLimits.STANDARD);
    ReadHarness read = reader.read(reader.roots().get(0));
    assertThat(read.harness().wires()).hasSizeGreaterThan(100);

    for (SheetKind kind : SheetKind.values()) {
      String sheet = SheetExport.write(kind, read);
      for (String edited : List.of(sheet, sheet.replace("\n", "\r\n"), "\uFEFF" + sheet)) {
        assertThat(SheetMerge.merge(kind, edited.getBytes(UTF_8), read, KEEP))
            .isEqualTo(new SheetMergeResult(Map.of(), List.of(), List.of(), List.of(), List.of()));
      }
    }
  }

  @Property(tries = 400, seed = "12")
  void oneEditedCellIsOneChangedField(@ForAll long seed) {
    Random random = new Random(seed);
    String text = TidyWriter.withoutMark(new RandomHarnessText(seed).next());
    ReadHarness read = read(text);
    List<String> lines = new ArrayList<>(SheetExport.write(SheetKind.WIRES, read).lines().toList());
    List<CsvTable.Row> rows = CsvTable.read(SheetExport.write(SheetKind.WIRES, read), ',').rows();
    if (rows.size() < 2 || rows.size() != lines.size()) {
      return;
    }
    int at = 1 + random.nextInt(rows.size() - 1);
    List<String> cells = new ArrayList<>(rows.get(at).cells());
    cells.set(SheetKind.WIRES.columns().indexOf("colour"), "GN");
    cells.set(SheetKind.WIRES.columns().indexOf("cutMm"), "1234");
    lines.set(at, String.join(",", cells.stream().map(SheetRoundTripTest::quoted).toList()));

    SheetMergeResult result =
        SheetMerge.merge(SheetKind.WIRES, String.join("\n", lines).getBytes(UTF_8), read, KEEP);

    ObjectNode expected = (ObjectNode) MAPPER.readTree(text);
    ObjectNode wire = (ObjectNode) expected.get("wires").get(cells.get(0));
    wire.put("colour", "GN");
    wire.put("cutMm", 1234);
    assertThat(result.problems()).isEmpty();
    assertThat(MAPPER.readTree(String.valueOf(result.files().get(ROOT)))).isEqualTo(expected);
  }

  private static String quoted(String cell) {
    return '"' + cell.replace("\"", "\"\"") + '"';
  }

  private static ReadHarness read(String text) {
    return new HarnessReader(MemoryFiles.of(ROOT, text), ReadLimits.STANDARD).read(ROOT);
  }
}
