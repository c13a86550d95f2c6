package org.tugtest.write;

import static java.nio.charset.StandardCharsets.UTF_16LE;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tugtest.read.HarnessReader;
import org.tugtest.read.MemoryFiles;
import org.tugtest.read.ReadHarness;
import org.tugtest.read.ReadLimits;
import org.tugtest.write.WireListResult.Imported;
import org.tugtest.write.WireListResult.Refused;

class WireListImportTest {
  private static final String ROOT = "car.harness.json";

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "\n\n",
        "a,b,c\n1,2,3\n",
        "from,colour\nR1:1,RD\n",
        "from,to\n",
        "from,to\n\"R1:1,R2:1\n",
        "{\"format\": 1}",
        "PK\u0003\u0004 not a list",
        "from,to\nR1\u0000,R2\n"
      })
  void refusesWhatIsNoWireList(String text) {
    WireListResult result = read(text, null);

    assertThat(result).isInstanceOf(Refused.class);
    assertThat(((Refused) result).problems().get(0).message())
        .startsWith("list.csv ")
        .endsWith(".");
    assertThat(((Refused) result).problems().get(0).remedy()).endsWith(".");
  }

  @Test
  void namesTheRowWhoseQuoteStaysOpen() {
    WireListResult result = read("from,to\nR1:1,R2:1\nR1:2,\"R2:2\nR1:3,R2:3\n", null);

    assertThat(((Refused) result).problems().get(0).message())
        .isEqualTo("list.csv row 3 cannot be read: a quote is not closed.");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          {"frm": "A"}                                   | did you mean from
          {"from": 1}                                    | is not a text
          {"from": "A"                                   | the map of columns
          {"from": "A", "to": "B", "colours": {"B": "x"}} | stands for no IEC 60757 colour
          """)
  void refusesABadMap(String map, String why) {
    WireListResult result = read("R1:1,R2:1\n", map);

    assertThat(((Refused) result).problems().get(0).message()).contains(why);
  }

  @Test
  void readsTheNastyListAsReviewed() throws IOException {
    WireListResult result =
        WireListImport.read(
            "nasty.csv",
            resource("nasty.csv"),
            new WireListImport.Options("bench.harness.json", "Bench", null));

    Imported imported = (Imported) result;
    assertThat(imported.files().get("bench.harness.json"))
        .isEqualTo(new String(resource("nasty.harness.json"), UTF_8));
    assertThat(imported.unclear().stream().map(Unclear::shown))
        .containsExactlyElementsOf(
            new String(resource("nasty.unclear.txt"), UTF_8).lines().toList());
    assertThat(imported.encoding()).isEqualTo("Windows-1252 (assumed)");
    assertThat(imported.separator()).isEqualTo(';');
    assertThat(imported.wires()).isEqualTo(15);
    assertThat(readBack(imported).problems()).isEmpty();
  }

  @Test
  void readsAPlainListWithoutAWord() {
    Imported imported =
        imported("from,to,colour,mm2\nR1:1,R2:1,RD/WH,0.5\nR1:2,R2:2,BK,0.50\n", null);

    assertThat(imported.unclear()).isEmpty();
    assertThat(imported.encoding()).isEqualTo("UTF-8");
    assertThat(imported.columns())
        .containsExactly("from = from", "to = to", "colour = colour", "mm2 = areaMm2");
    assertThat(imported.files())
        .containsOnlyKeys(ROOT)
        .containsEntry(
            ROOT,
            """
            {
              "format": 1,
              "title": "Car",
              "sketch": true,
              "wires": {
                "W001": {"from": "R1:1", "to": "R2:1", "areaMm2": 0.5, "colour": "RD/WH"},
                "W002": {"from": "R1:2", "to": "R2:2", "areaMm2": 0.50, "colour": "BK"}
              }
            }
            """);
  }

  @Test
  void findsTheSeparatorAndTheEncoding() {
    String rows = "from;to;Länge (mm)\nR1:1;R2:1;350,5\n";

    Imported marked = imported(("\uFEFF" + rows).getBytes(UTF_8), null);
    Imported wide = imported(("\uFEFF" + rows.replace(';', '\t')).getBytes(UTF_16LE), null);
    Imported announced = imported("sep=|\r\n" + rows.replace(';', '|'), null);

    assertThat(marked.files()).isEqualTo(wide.files()).isEqualTo(announced.files());
    assertThat(marked.files().get(ROOT)).contains("\"cutMm\": 350.5");
    assertThat(marked.separator()).isEqualTo(';');
    assertThat(wide.separator()).isEqualTo('\t');
    assertThat(wide.encoding()).isEqualTo("UTF-16");
    assertThat(marked.unclear()).isEmpty();
    assertThat(wide.unclear()).isEmpty();
    assertThat(announced.unclear()).isEmpty();
  }

  @Test
  void readsAHeaderOfTwoRows() {
    Imported imported =
        imported(
            "From,,To,,Wire,\nConnector,Pin,Connector,Pin,Colour,mm²\nR1,1,R2,4,RD,2.5\n", null);

    assertThat(imported.files().get(ROOT))
        .contains("{\"from\": \"R1:1\", \"to\": \"R2:4\", \"areaMm2\": 2.5, \"colour\": \"RD\"}");
    assertThat(imported.unclear()).isEmpty();
  }

  @Test
  void followsAMapByLetterAndByName() {
    String map =
        "{\"from\": \"Column A\", \"to\": \"3\", \"areaMm2\": \"D\", \"colours\": {\"B\": \"BK\"}}";
    Imported imported = imported("R1:1,B,R2:1,0.5\nR1:2,RD,R2:2,0.75\n", map);
    Imported named =
        imported(
            "Anschluss,X,Gegenseite\nR1:1,B,R2:1\n",
            "{\"from\": \"anschluss\", \"to\": \"Gegenseite\", \"colour\": \"X\", \"colours\":"
                + " {\"b\": \"black\"}}");

    assertThat(imported.files().get(ROOT))
        .contains(
            "\"W001\": {\"from\": \"R1:1\", \"to\": \"R2:1\", \"areaMm2\": 0.5, \"note\": \"column"
                + " 2: B\"}")
        .contains("\"W002\"");
    assertThat(named.files().get(ROOT))
        .contains("\"W001\": {\"from\": \"R1:1\", \"to\": \"R2:1\", \"colour\": \"BK\"}");
    assertThat(named.unclear()).isEmpty();
  }

  @Test
  void makesAFileForEachLoom() {
    Imported imported =
        imported(
            "from,to,loom\nR1:1,R2:1,front\nR1:2,R2:2,Rear end\nR1:3,R2:3,FRONT\nR1:4,R2:4,\n",
            null);

    assertThat(imported.files().keySet())
        .containsExactly(ROOT, "car-front.json", "car-rear-end.json");
    assertThat(imported.files().get("car-front.json"))
        .contains("\"id\": \"front\"")
        .contains("\"W001\"")
        .contains("\"W003\"");
    assertThat(imported.files().get(ROOT)).contains("\"W004\"").contains("\"car-rear-end.json\"");
    assertThat(readBack(imported).problems()).isEmpty();
    assertThat(readBack(imported).harness().wires()).hasSize(4);
  }

  @Test
  void putsASingleLoomIntoTheRoot() {
    Imported imported = imported("from,to,loom\nR1:1,R2:1,front\n", null);

    assertThat(imported.files()).containsOnlyKeys(ROOT);
    assertThat(imported.files().get(ROOT)).contains("\"loom\": {\n    \"id\": \"front\"\n  }");
  }

  @Test
  void namesTheRowsOfTheSameDoubtOnce() {
    Imported imported = imported("from,to,colour\nR1:1,R2:1,B\nR1:2,R2:2,RD\nR1:3,R2:3,B\n", null);

    assertThat(imported.unclear()).hasSize(1);
    assertThat(imported.unclear().get(0).row()).isEqualTo(2);
    assertThat(imported.unclear().get(0).column()).isEqualTo(3);
    assertThat(imported.unclear().get(0).moreRows()).containsExactly(4);
    assertThat(imported.unclear().get(0).shown())
        .startsWith("row 2, column 3 (also row 4): \"B\" ");
  }

  @Test
  void givesNoIdThatALaterRowOrAnEndHas() {
    Imported imported = imported("id,from,to\n,R1:1,W002:1\nW001,R1:2,R2:2\n,R1:3,R2:3\n", null);

    assertThat(readBack(imported).harness().wires().keySet())
        .containsExactly("W001", "W003", "W004");
    assertThat(readBack(imported).problems()).isEmpty();
  }

  @Test
  void boundsWhatACellMayHold() {
    String huge = "x".repeat(50_000);
    Imported imported =
        imported("from,to,circuit,note\nR1:1,R2:1," + huge + "," + huge + "\n", null);

    assertThat(readBack(imported).problems()).isEmpty();
    assertThat(imported.unclear().stream().map(Unclear::done))
        .contains("The note of W001 was cut.");
  }

  @Test
  void readsTwiceTheSame() throws IOException {
    WireListImport.Options options = new WireListImport.Options(ROOT, null, null);

    assertThat(WireListImport.read("a.csv", resource("nasty.csv"), options))
        .isEqualTo(WireListImport.read("a.csv", resource("nasty.csv"), options));
  }

  private static WireListResult read(String text, @Nullable String map) {
    return WireListImport.read(
        "list.csv", text.getBytes(UTF_8), new WireListImport.Options(ROOT, "Car", map));
  }

  private static Imported imported(String text, @Nullable String map) {
    return imported(text.getBytes(UTF_8), map);
  }

  private static Imported imported(byte[] bytes, @Nullable String map) {
    WireListResult result =
        WireListImport.read("list.csv", bytes, new WireListImport.Options(ROOT, "Car", map));
    assertThat(result).isInstanceOf(Imported.class);
    return (Imported) result;
  }

  static ReadHarness readBack(Imported imported) {
    String root = imported.files().keySet().iterator().next();
    return new HarnessReader(MemoryFiles.of(imported.files()), ReadLimits.STANDARD).read(root);
  }

  private static byte[] resource(String name) throws IOException {
    try (InputStream in = WireListImportTest.class.getResourceAsStream("/wirelist/" + name)) {
      assertThat(in).as(name).isNotNull();
      return in.readAllBytes();
    }
  }

  @Test
  void readsAWireThatIsLaidInPlace() {
    Imported imported =
        (Imported) read("from,to,length (mm)\nA:1,B:1,in place\nA:2,B:2,700\n", null);

    assertThat(imported.files().get(ROOT))
        .contains("{\"from\": \"A:1\", \"to\": \"B:1\", \"laidInPlace\": true}")
        .contains("{\"from\": \"A:2\", \"to\": \"B:2\", \"cutMm\": 700}");
  }
}
