package org.tugtest.report.sheets.list;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.tugtest.report.html.SampleCar;
import org.tugtest.route.Totals;

class ShoppingListTest {
  private static final Set<Totals.Kind> BY_THE_METRE =
      Set.of(Totals.Kind.WIRE, Totals.Kind.CABLE, Totals.Kind.COVERING);

  @Test
  void whatTheSampleTakesIsWhatItsTotalsSay() {
    Made made = Made.ofSample(new ShoppingList());
    Map<String, Double> metres = new TreeMap<>();
    Map<String, Integer> counts = new TreeMap<>();
    for (Totals.Line line : SampleCar.facts().totals().whole().lines()) {
      if (BY_THE_METRE.contains(line.kind())) {
        metres.put(line.part(), line.metres());
      } else {
        counts.put(line.kind().word() + " " + line.part(), line.count());
      }
    }
    Map<String, Double> listed = new TreeMap<>();
    made.rows("shopping.csv")
        .forEach(row -> listed.put(row.get("part"), Double.valueOf(row.get("net_m"))));
    assertThat(listed.keySet()).isEqualTo(metres.keySet());
    listed.forEach(
        (part, net) -> assertThat(net).as(part).isCloseTo(metres.get(part), within(0.0051)));
    Map<String, Integer> pieces = new TreeMap<>();
    made.rows("shopping-pieces.csv").stream()
        .filter(row -> !row.get("what").equals("blanks"))
        .forEach(
            row ->
                pieces.put(
                    row.get("what") + " " + row.get("part"), Integer.valueOf(row.get("net"))));
    assertThat(pieces).isEqualTo(counts);
  }

  private static String wires(int count, double mm) {
    StringBuilder json = new StringBuilder("{\"format\": 1, \"sketch\": true, \"wires\": {");
    for (int i = 0; i < count; i++) {
      json.append(i == 0 ? "" : ",")
          .append("\"W" + i + "\": {\"from\": \"A:" + i + "\", \"to\": \"B:" + i + "\",")
          .append("\"areaMm2\": 1, \"cutMm\": " + mm + "}");
    }
    return json.append("}}").toString();
  }

  @Test
  void eachPieceIsATenthOfAMetreLongerAndWholeMetresAreBought() {
    // 10 x 0.9 m + 10 x 0.1 m is 10 m; a millimetre more a piece needs the next
    CSVRecord even = Made.of(new ShoppingList(), wires(10, 900)).rows("shopping.csv").get(0);
    assertThat(even.get("net_m")).isEqualTo("9");
    assertThat(even.get("buy_m")).isEqualTo("10");
    CSVRecord over = Made.of(new ShoppingList(), wires(10, 901)).rows("shopping.csv").get(0);
    assertThat(over.get("buy_m")).isEqualTo("11");
  }

  private static CSVRecord housed(int blanks) {
    StringBuilder row = new StringBuilder();
    for (int i = 1; i <= blanks; i++) {
      row.append(i == 1 ? "" : ", ").append('"').append(i).append('"');
    }
    return Made.of(
            new ShoppingList(),
            """
            {"format": 1, "parts": {"housings": {"h": {"side": "pin", "family": "t2.8",
              "sealed": true, "rows": [[%s]]}}},
             "connectors": {"X": {"housing": "h", "blanked": true, "parked": "capped"}}}
            """
                .formatted(row))
        .rows("shopping-pieces.csv")
        .get(1);
  }

  @Test
  void sparesAreATenthAndAtLeastTwo() {
    assertThat(housed(1).get("part")).isEqualTo("family t2.8");
    assertThat(housed(1).get("buy")).isEqualTo("3");
    assertThat(housed(20).get("buy")).isEqualTo("22");
    assertThat(housed(21).get("buy")).isEqualTo("24");
  }

  @Test
  void whatTheDonorHasIsNotBought() {
    Made made =
        Made.of(
            new ShoppingList(),
            """
            {"format": 1, "sketch": true, "loom": {"id": "old", "stage": "found"},
             "connectors": {"X": {"housing": "h"}},
             "wires": {"W1": {"from": "X:1", "to": "S", "areaMm2": 1, "cutMm": 500}}}
            """);
    assertThat(made.has("shopping.csv")).isFalse();
  }

  @Test
  void lengthsThatAreNotKnownAreNotZero() {
    Made made =
        Made.of(
            new ShoppingList(),
            """
            {"format": 1, "sketch": true,
             "wires": {"W1": {"from": "A:1", "to": "S", "areaMm2": 1}}}
            """);
    CSVRecord row = made.rows("shopping.csv").get(0);
    assertThat(row.get("buy_m")).isEqualTo("not known: no length");
    assertThat(row.get("without_length")).isEqualTo("1");
  }
}
