package org.tugtest.solve;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * The networks N01 to N07 of Lessons In Electric Circuits vol. I with their published answers, and
 * N08, like a vehicle, with the answer of ngspice 39.3; for tests. An ideal source is given a
 * resistance that moves no printed digit.
 */
record Published(
    String id, Circuit circuit, Map<String, Integer> nodes, Map<String, Integer> elements) {
  private static final double IDEAL_OHMS = 1e-9;

  /** A published or simulated figure. */
  record Expected(String network, String quantity, String published, double simulated) {}

  static List<Published> all() {
    Map<String, List<CSVRecord>> rows = new LinkedHashMap<>();
    for (CSVRecord row : rows("dc_networks.csv")) {
      rows.computeIfAbsent(row.get("network_id"), id -> new ArrayList<>()).add(row);
    }
    return rows.entrySet().stream().map(e -> of(e.getKey(), e.getValue())).toList();
  }

  static List<Expected> expected(String network) {
    return rows("dc_network_expected.csv").stream()
        .filter(row -> row.get("network_id").equals(network))
        .map(
            row ->
                new Expected(
                    network,
                    row.get("quantity"),
                    row.get("published_value"),
                    Double.parseDouble(row.get("ngspice_value"))))
        .toList();
  }

  /** The solved figure of that name: {@code v(2)}, {@code v(1,2)}, {@code i(R1)}. */
  double figure(Solution solution, String quantity) {
    String[] names = quantity.substring(2, quantity.length() - 1).split(",", -1);
    if (quantity.startsWith("i(")) {
      return solution.amps(Objects.requireNonNull(elements.get(names[0])));
    }
    double volts = volts(solution, names[0]);
    return names.length == 1 ? volts : volts - volts(solution, names[1]);
  }

  private double volts(Solution solution, String node) {
    return solution.volts(Objects.requireNonNull(nodes.get(node))).orElseThrow()
        - solution.volts(Objects.requireNonNull(nodes.get("0"))).orElseThrow();
  }

  private static Published of(String id, List<CSVRecord> rows) {
    TreeSet<String> names = new TreeSet<>();
    for (CSVRecord row : rows) {
      names.add(row.get("node_plus"));
      names.add(row.get("node_minus"));
    }
    Map<String, Integer> nodes = new LinkedHashMap<>();
    names.forEach(name -> nodes.put(name, nodes.size()));
    Map<String, Integer> elements = new LinkedHashMap<>();
    List<Branch> branches = new ArrayList<>();
    for (CSVRecord row : rows) {
      int a = Objects.requireNonNull(nodes.get(row.get("node_plus")));
      int b = Objects.requireNonNull(nodes.get(row.get("node_minus")));
      double value = Double.parseDouble(row.get("value"));
      elements.put(row.get("element"), branches.size());
      branches.add(
          row.get("kind").equals("V")
              ? new Branch.Source(
                  a, b, value, IDEAL_OHMS, IDEAL_OHMS, Double.POSITIVE_INFINITY, false)
              : new Branch.Resistor(a, b, value));
    }
    return new Published(id, new Circuit(nodes.size(), branches), nodes, elements);
  }

  private static List<CSVRecord> rows(String name) {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (InputStream in = Objects.requireNonNull(Published.class.getResourceAsStream(name))) {
      return format.parse(new InputStreamReader(in, StandardCharsets.UTF_8)).getRecords();
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  @Override
  public String toString() {
    return id;
  }
}
