package org.tugtest.route;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tugtest.facts.Facts;
import org.tugtest.report.html.SampleCar;

/** The lamp pod of the sample as its README works it by hand, row by row. */
class SampleByHandTest {
  private static final Path README =
      Path.of(System.getProperty("basedir", "."), "../sample-project/README.md");

  /** The rows of the table whose head begins with this word, cell by cell, without back quotes. */
  private static List<List<String>> table(String head) throws IOException {
    List<List<String>> rows = new ArrayList<>();
    boolean in = false;
    for (String line : Files.readAllLines(README)) {
      if (line.startsWith("| " + head + " |")) {
        in = true;
      } else if (!line.startsWith("|")) {
        in = false;
      } else if (in && !line.startsWith("| ---")) {
        String[] cells = line.replace("`", "").split("\\|");
        rows.add(Arrays.stream(cells).skip(1).map(String::strip).toList());
      }
    }
    return rows;
  }

  private static double sum(String cell) {
    return Arrays.stream(cell.split("\\+"))
        .mapToDouble(part -> Double.parseDouble(part.strip()))
        .sum();
  }

  @Test
  void lengthsAreThoseOfTheTable() throws IOException {
    Facts facts = SampleCar.facts();
    List<List<String>> rows = table("wire");
    assertThat(rows).hasSize(15);
    for (List<String> row : rows) {
      Route route = facts.routes().of(row.get(0)).orElseThrow();
      assertThat(route.segmentsMm()).as(row.get(0)).isEqualTo(sum(row.get(1)));
      assertThat(route.routedMm()).as(row.get(0)).isEqualTo(sum(row.get(1)) + sum(row.get(2)));
      assertThat(route.routedMm()).as(row.get(0)).isEqualTo(Double.parseDouble(row.get(3)));
      assertThat(route.cutMm()).as(row.get(0)).isEqualTo(Double.parseDouble(row.get(4)));
    }
  }

  @Test
  void bundlesAreThoseOfTheTable() throws IOException {
    Facts facts = SampleCar.facts();
    List<List<String>> rows = table("piece");
    assertThat(rows).hasSize(5);
    for (List<String> row : rows) {
      String[] piece = row.get(0).split(" ", -1);
      Bundle bundle =
          facts.bundles().of(piece[0]).stream()
              .filter(one -> one.fromMm() == Double.parseDouble(piece[1]))
              .findFirst()
              .orElseThrow();
      assertThat(bundle.toMm()).isEqualTo(Double.parseDouble(piece[3]));
      assertThat(bundle.wireIds()).containsExactly(row.get(1).split(" "));
      double[] sizes =
          Arrays.stream(row.get(2).split(" ")).mapToDouble(Double::parseDouble).toArray();
      assertThat(bundle.diametersMm())
          .containsExactlyInAnyOrderElementsOf(Arrays.stream(sizes).boxed().toList());
      double squares = Arrays.stream(sizes).map(d -> d * d).sum();
      assertThat(squares).isCloseTo(Double.parseDouble(row.get(3)), within(1e-9));
      assertThat(bundle.expectedMm()).isCloseTo(Double.parseDouble(row.get(4)), within(0.005));
      assertThat(bundle.looseMm()).isCloseTo(1.3 * Math.sqrt(squares), within(1e-9));
      assertThat(bundle.looseMm()).isCloseTo(Double.parseDouble(row.get(5)), within(0.005));
    }
  }
}
