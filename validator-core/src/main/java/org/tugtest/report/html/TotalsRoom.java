package org.tugtest.report.html;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.model.Harness;
import org.tugtest.model.Loom;
import org.tugtest.network.Point;
import org.tugtest.network.WireEnd;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.html.text.Few;
import org.tugtest.report.html.totals.LighterParts;
import org.tugtest.report.html.totals.PartTotals;
import org.tugtest.text.NaturalOrder;

/**
 * What is there: counts, metres and grams.
 *
 * @param parts metres and grams
 * @param lighter wires that could be of a smaller part
 * @param looms what each loom has, the loose things last
 * @param connectors what is used and free in each connector
 * @param cavityEnds wire ends in cavities
 * @param contacts cavities that hold at least one wire: one terminal each
 * @param pinEnds wire ends on device pins
 * @param spliceEnds wire ends in splices
 * @param openEnds wire ends that name nothing known
 * @param cavities of the connectors whose housing is known
 * @param free those of them without a wire
 */
record TotalsRoom(
    PartTotals parts,
    LighterParts lighter,
    Few<LoomRow> looms,
    Few<ConnectorRow> connectors,
    int devices,
    int cavityEnds,
    int contacts,
    int pinEnds,
    int spliceEnds,
    int openEnds,
    int wires,
    int splices,
    int cavities,
    int free) {
  private static final int MOST_LOOMS = 100;
  private static final int MOST_CONNECTORS = 300;

  /** One loom; an empty id stands for what belongs to none. */
  record LoomRow(
      String id,
      String title,
      String revision,
      String stage,
      int wires,
      int connectors,
      int splices) {}

  /**
   * One connector.
   *
   * @param face number of its face; 0 when it has no place in the page
   * @param known whether a housing says how many cavities there are
   */
  record ConnectorRow(
      String id, int face, boolean known, int cavities, int used, int plugged, int free) {}

  static TotalsRoom of(HarnessReport harness, FacesRoom faces) {
    Facts facts = harness.facts();
    Map<Point.Kind, Integer> ends = new TreeMap<>();
    int placed = 0;
    int contacts = 0;
    for (Map.Entry<Point, List<WireEnd>> entry : facts.wiring().ends().entrySet()) {
      ends.merge(entry.getKey().kind(), entry.getValue().size(), Integer::sum);
      placed += entry.getValue().size();
      contacts += entry.getKey().kind() == Point.Kind.CAVITY ? 1 : 0;
    }
    List<ConnectorRow> connectors =
        faces.faces().stream().map(face -> connector(face, faces)).toList();
    List<ConnectorRow> known = connectors.stream().filter(ConnectorRow::known).toList();
    return new TotalsRoom(
        PartTotals.of(facts),
        LighterParts.of(harness),
        Few.of(looms(facts.harness(), faces), MOST_LOOMS),
        Few.of(connectors, MOST_CONNECTORS),
        facts.harness().devices().size(),
        ends.getOrDefault(Point.Kind.CAVITY, 0),
        contacts,
        ends.getOrDefault(Point.Kind.PIN, 0),
        ends.getOrDefault(Point.Kind.SPLICE, 0),
        2 * facts.harness().wires().size() - placed,
        facts.harness().wires().size(),
        facts.harness().splices().size(),
        known.stream().mapToInt(ConnectorRow::cavities).sum(),
        known.stream().mapToInt(ConnectorRow::free).sum());
  }

  private static List<LoomRow> looms(Harness harness, FacesRoom faces) {
    Map<String, int[]> counts = new TreeMap<>(NaturalOrder.NATURAL);
    harness.looms().keySet().forEach(id -> counts.put(id, new int[3]));
    harness.wires().values().forEach(wire -> count(counts, wire.loom(), 0));
    faces.faces().forEach(face -> count(counts, face.loom(), 1));
    harness.splices().values().forEach(splice -> count(counts, splice.loom(), 2));
    List<LoomRow> rows = new ArrayList<>();
    counts.forEach((id, n) -> rows.add(row(id, harness.looms().get(id), n)));
    rows.sort(Comparator.comparing(row -> row.id().isEmpty()));
    return List.copyOf(rows);
  }

  private static void count(Map<String, int[]> counts, @Nullable String loom, int what) {
    counts.computeIfAbsent(Objects.requireNonNullElse(loom, ""), none -> new int[3])[what]++;
  }

  private static LoomRow row(String id, @Nullable Loom loom, int[] counts) {
    return new LoomRow(
        id,
        loom == null || loom.title() == null ? "" : loom.title(),
        loom == null || loom.revision() == null ? "" : loom.revision(),
        loom == null ? "" : loom.stage().word(),
        counts[0],
        counts[1],
        counts[2]);
  }

  private static ConnectorRow connector(Face face, FacesRoom faces) {
    int cavities = 0;
    int used = 0;
    int plugged = 0;
    for (List<Face.Cell> row : face.rows()) {
      for (Face.Cell cell : row) {
        if (!cell.gap()) {
          cavities++;
          used += cell.wires().isEmpty() ? 0 : 1;
          plugged += cell.wires().isEmpty() && cell.plugged() ? 1 : 0;
        }
      }
    }
    return new ConnectorRow(
        face.id(),
        face.number() <= faces.placed().shown().size() ? face.number() : 0,
        face.layoutKnown(),
        cavities,
        used,
        plugged,
        cavities - used);
  }
}
