package org.tugtest.operate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.tugtest.facts.Facts;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.report.html.SampleCar;

/** Two states of the sample car against what its README works out with a pencil. */
class SampleStatesByHandTest {
  private static final Path README =
      Path.of(System.getProperty("basedir", "."), "../sample-project/README.md");
  private static final Pattern NAMES = Pattern.compile("`([^`]+)`");
  private final Facts facts = SampleCar.facts();

  /** The rows of the table below a heading line, cells trimmed, without head and rule. */
  private static List<List<List<String>>> tables() throws IOException {
    String text = Files.readString(README);
    int from = text.indexOf("## Two states, worked by hand");
    int to = text.indexOf("\n## ", from);
    List<List<List<String>>> tables = new ArrayList<>();
    boolean inside = false;
    for (String line : text.substring(from, to).split("\n", -1)) {
      if (line.startsWith("| ") && !inside) {
        tables.add(new ArrayList<>());
        inside = true;
      } else if (line.startsWith("| ") && !line.startsWith("| ---")) {
        String[] cells = line.substring(1, line.lastIndexOf('|')).split("\\|", -1);
        tables.get(tables.size() - 1).add(List.of(cells).stream().map(String::strip).toList());
      } else if (!line.startsWith("|")) {
        inside = false;
      }
    }
    return tables;
  }

  private static List<String> names(String cell) {
    List<String> names = new ArrayList<>();
    Matcher matcher = NAMES.matcher(cell);
    while (matcher.find()) {
      names.add(matcher.group(1));
    }
    return names;
  }

  private Edge edge(String name) {
    return facts.network().edges().stream()
        .filter(edge -> edge.text().equals(name))
        .findFirst()
        .orElseThrow(() -> new AssertionError("the sample has no " + name));
  }

  private OperatingPoint state(String name) {
    return facts.operating().in(name).orElseThrow();
  }

  private double milliohm(OperatingPoint state, Edge edge) {
    Element element = edge instanceof Edge.OfElement inside ? inside.element() : null;
    Double given =
        element instanceof Element.Load load
            ? load.ohms()
            : element instanceof Element.Source source ? source.ohms() : null;
    return 1000 * (given == null ? state.resistance(edge).ohms() : given);
  }

  private static double last(List<String> row) {
    return Double.parseDouble(row.get(row.size() - 1));
  }

  @Test
  void resistancesAreThoseOfTheTables() throws IOException {
    List<List<List<String>>> tables = tables();
    assertThat(tables).hasSize(6);
    double sum = 0;
    for (List<String> row : tables.get(0)) {
      String name = names(row.get(0)).get(0);
      assertThat(milliohm(state("cranking"), edge(name)))
          .as(name)
          .isCloseTo(last(row), withinPercentage(0.5));
      sum += last(row);
    }
    assertThat(sum).as("the loop of the starter").isCloseTo(58.125, withinPercentage(0.01));
    double lost = 0;
    for (List<String> row : tables.get(4)) {
      String name = names(row.get(0)).get(0);
      OperatingPoint state = state("ignition on");
      double amps = Double.parseDouble(row.get(2));
      assertThat(milliohm(state, edge(name))).as(name).isCloseTo(last(row), withinPercentage(0.5));
      assertThat(Math.abs(state.amps(edge(name)))).as(name).isCloseTo(amps, withinPercentage(0.2));
      lost += amps * last(row);
    }
    assertThat(lost)
        .as("lost on the way of the lambda heater")
        .isCloseTo(425, withinPercentage(0.2));
  }

  @Test
  void loadsDrawWhatTheTablesSay() throws IOException {
    double cranking = draws("cranking", tables().get(1));
    assertThat(cranking).isCloseTo(40.6, withinPercentage(0.2));
    double ignition = draws("ignition on", tables().get(3));
    assertThat(ignition).isCloseTo(7.42, withinPercentage(0.2));
  }

  /** Every load of a state that draws is in the table, besides the motor; and what they draw. */
  private double draws(String name, List<List<String>> table) {
    OperatingPoint state = state(name);
    double sum = 0;
    List<String> told = new ArrayList<>(List.of("STR.motor"));
    for (List<String> row : table) {
      for (String load : names(row.get(0))) {
        assertThat(Math.abs(state.amps(edge(load))))
            .as(name + " " + load)
            .isCloseTo(last(row), withinPercentage(3));
        told.add(load);
        sum += last(row);
      }
    }
    for (Edge edge : facts.network().edges()) {
      if (edge instanceof Edge.OfElement inside
          && (inside.element() instanceof Element.Load || inside.element() instanceof Element.Coil)
          && state.draws(inside)) {
        assertThat(told).contains(edge.text());
      }
    }
    return sum;
  }

  @Test
  void theSolverComesToTheSame() throws IOException {
    int held = 0;
    for (int table : new int[] {2, 5}) {
      for (List<String> row : tables().get(table)) {
        OperatingPoint state = state(row.get(0));
        Edge edge = edge(names(row.get(1)).get(0));
        double figure = row.get(1).startsWith("amps") ? state.amps(edge) : state.across(edge);
        assertThat(Math.abs(figure))
            .as(String.join(" ", row))
            .isCloseTo(last(row), withinPercentage(0.2));
        held++;
      }
    }
    assertThat(held).isEqualTo(8);
  }

  /** The arithmetic of the page, so that a changed sample shows where the page is to be mended. */
  @Test
  void thePageAddsUp() {
    double shared = 40.6 * 10.867e-3 + 25.6 * 1.05e-3 + 9.1 * 0.15e-3;
    double motor = (12.4 - shared) / 58.125e-3;
    assertThat(motor).isCloseTo(205.3, withinPercentage(0.05));
    assertThat(motor * 0.045).isCloseTo(9.24, withinPercentage(0.05));
    assertThat(12.4 - (motor + 40.6) * 0.010).isCloseTo(9.94, withinPercentage(0.05));
    assertThat(12.7 - 0.425).isCloseTo(12.275, withinPercentage(0.01));
  }
}
