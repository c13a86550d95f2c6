package org.tugtest.report.sheets.documents;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tugtest.report.MemorySink;
import org.tugtest.report.html.SampleCar;

class OddShapesTest {
  private static final Pattern SCRIPT = Pattern.compile("(?s)<script.*?</script>");

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{\"format\": 1}",
        // a wire from a splice to itself, an end that is open, one that names nothing known
        """
        {"format": 1, "sketch": true, "wires": {
          "W1": {"from": "S1", "to": "S1"}, "W2": {"from": "S1"}, "W3": {}}}
        """,
        """
        {"format": 1, "wires": {"W1": {"from": "X:1", "to": "Y", "part": "none", "awg": "99"}}}
        """,
        // splices only, on a segment that does not exist, with parts that do not
        """
        {"format": 1, "splices": {"S1": {"on": "s", "offsetMm": 10, "part": "p",
                                         "coverings": ["c"]}, "S2": {"kind": "end-cap"}},
         "wires": {"W1": {"from": "S1", "to": "S2", "areaMm2": 1}}}
        """,
        // a segment to itself, one without ends, one of no length, a loop
        """
        {"format": 1, "sketch": true,
         "connectors": {"A": {"at": "n1"}, "B": {"at": "n1", "boot": "none"}},
         "layout": {"nodes": {"n1": {"coverings": ["c"]}, "n2": {}},
           "segments": {"s1": {"from": "n1", "to": "n1", "lengthMm": 100, "coverings": ["c"]},
                        "s2": {"lengthMm": 100, "coverings": ["c"]},
                        "s3": {"from": "n1", "to": "n2", "coverings": ["c"], "supports": 0},
                        "s4": {"from": "n1", "to": "n2", "lengthMm": 1e7}}},
         "wires": {"W1": {"from": "A:1", "to": "B:1", "areaMm2": 1},
                   "W2": {"from": "A:1", "to": "B:1", "via": ["n2"], "areaMm2": 1}}}
        """,
        // groups of nothing, a cable of one wire that is not there, a wire in two groups
        """
        {"format": 1, "sketch": true,
         "groups": {"G1": {"kind": "cable", "wires": []}, "G2": {"kind": "cable", "wires": ["X"]},
                    "G3": {"kind": "twisted", "wires": ["W1"]},
                    "G4": {"kind": "cable", "wires": ["W1"]}},
         "wires": {"W1": {"from": "A:1", "to": "B:1", "cutMm": 100}}}
        """,
        // texts that a page or a spreadsheet would take for something else
        """
        {"format": 1, "title": "</style><script>x", "sketch": true,
         "loom": {"id": "con", "title": "=1", "revision": "</title>"},
         "wires": {"W1": {"from": "A:1", "to": "B:1", "label": "=cmd|x", "colour": "<b>"}}}
        """
      })
  void givesSheetsWithoutAFigureThatNobodyKnows(String json) throws IOException {
    MemorySink sink = new MemorySink();
    Documents.standard()
        .write(SampleCar.checked(Map.of("a.harness.json", json), "a.harness.json"), sink);
    for (String path : sink.paths()) {
      String text = sink.text(path);
      String body = path.endsWith(".html") ? text.substring(text.indexOf("<body>")) : text;
      assertThat(body.contains("<script>x")).as(path).isFalse();
      assertThat(SCRIPT.matcher(body).replaceAll(""))
          .as(path)
          .doesNotContain("NaN")
          .doesNotContain("Infinity")
          .doesNotContain("null")
          .doesNotContain("not a number")
          .doesNotContain(",=");
    }
  }
}
