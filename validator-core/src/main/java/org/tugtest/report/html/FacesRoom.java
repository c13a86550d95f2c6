package org.tugtest.report.html;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Subject;
import org.tugtest.model.Connector;
import org.tugtest.model.Housing;
import org.tugtest.network.Mate;
import org.tugtest.network.Point;
import org.tugtest.network.Wiring;
import org.tugtest.report.html.text.Few;
import org.tugtest.report.html.text.Swatch;
import org.tugtest.report.html.text.WireText;
import org.tugtest.text.NaturalOrder;

/**
 * The faces of all connectors, by loom, the loose ones last.
 *
 * @param drawn whether they stand in the page; else the script draws the first ones on demand
 * @param colours codes of the wire colours that are used, with their names
 */
record FacesRoom(List<Face> faces, boolean drawn, Map<String, String> colours) {
  /** A page with more cavities than this would take long to open. */
  private static final int MOST_CAVITIES = 3000;

  /** So many connectors stand in a page that draws them on demand. */
  private static final int MOST_ON_DEMAND = 300;

  static FacesRoom of(Facts facts, Map<Subject, Mark> marks) {
    return new Builder(facts, marks).build();
  }

  /** The faces of one loom; an empty name stands for what belongs to none. */
  record OfLoom(String loom, List<Face> faces) {}

  /** Those that have a place in the page. */
  Few<Face> placed() {
    return Few.of(faces, drawn ? faces.size() : MOST_ON_DEMAND);
  }

  /** The faces by loom, in the order of the page. */
  List<OfLoom> looms() {
    Map<String, List<Face>> looms = new LinkedHashMap<>();
    placed()
        .shown()
        .forEach(face -> looms.computeIfAbsent(face.loom(), id -> new ArrayList<>()).add(face));
    return looms.entrySet().stream()
        .map(loom -> new OfLoom(loom.getKey(), List.copyOf(loom.getValue())))
        .toList();
  }

  private static final class Builder {
    private final Facts facts;
    private final Wiring wiring;
    private final WireText texts;
    private final Map<Subject, Mark> marks;
    private final Set<String> codes = new TreeSet<>();

    Builder(Facts facts, Map<Subject, Mark> marks) {
      this.facts = facts;
      this.wiring = facts.wiring();
      this.texts = new WireText(facts.harness());
      this.marks = marks;
    }

    FacesRoom build() {
      Set<String> ids = new TreeSet<>(NaturalOrder.NATURAL);
      ids.addAll(facts.harness().connectors().keySet());
      wiring.implied().stream()
          .filter(point -> point.kind() == Point.Kind.CAVITY)
          .forEach(point -> ids.add(point.owner()));
      List<String> sorted = new ArrayList<>(ids);
      sorted.sort(
          Comparator.comparing((String id) -> loom(id).isEmpty())
              .thenComparing(this::loom, NaturalOrder.NATURAL)
              .thenComparing(NaturalOrder.NATURAL));
      List<Face> faces = new ArrayList<>();
      for (String id : sorted) {
        faces.add(face(faces.size() + 1, id));
      }
      int cavities =
          faces.stream().flatMap(face -> face.rows().stream()).mapToInt(List::size).sum();
      Map<String, String> colours = new LinkedHashMap<>(Swatch.known());
      colours.keySet().retainAll(codes);
      return new FacesRoom(faces, cavities <= MOST_CAVITIES, colours);
    }

    private String loom(String id) {
      Connector connector = facts.harness().connectors().get(id);
      return connector == null || connector.loom() == null ? "" : connector.loom();
    }

    private Face face(int number, String id) {
      Connector connector = facts.harness().connectors().get(id);
      Housing housing = wiring.mating().housingOf(id).orElse(null);
      List<List<String>> rows = housing == null ? List.of(wiring.cavitiesOf(id)) : housing.rows();
      int widest = rows.stream().mapToInt(List::size).max().orElse(0);
      List<List<Face.Cell>> cells = new ArrayList<>();
      for (List<String> row : rows) {
        List<Face.Cell> line = new ArrayList<>();
        for (int i = 0; i < widest; i++) {
          line.add(cell(id, connector, i < row.size() ? row.get(i) : ""));
        }
        cells.add(List.copyOf(line));
      }
      return new Face(
          number, id, loom(id), said(id, connector, housing), List.copyOf(cells), housing != null);
    }

    private Face.Cell cell(String id, @Nullable Connector connector, String name) {
      if (name.isEmpty()) {
        return new Face.Cell("", List.of(), false, null);
      }
      List<Face.CellWire> wires =
          wiring.endsAt(Point.cavity(id, name)).stream().map(end -> wire(end.wire())).toList();
      return new Face.Cell(
          name, wires, plugged(connector, name), marks.get(Subject.cavity(id, name)));
    }

    private Face.CellWire wire(org.tugtest.model.Wire wire) {
      Swatch swatch = Swatch.of(wire.colour());
      codes.add(swatch.base());
      codes.add(swatch.stripe());
      return new Face.CellWire(wire.id(), swatch, texts.size(wire), texts.guessed(wire));
    }

    private static boolean plugged(@Nullable Connector connector, String cavity) {
      if (connector == null) {
        return false;
      }
      Connector.Cavity own = connector.cavities().get(cavity);
      Boolean blank = own == null ? null : own.blank();
      return blank == null ? connector.blanked() : blank;
    }

    private List<String> said(String id, @Nullable Connector connector, @Nullable Housing housing) {
      List<String> facts = new ArrayList<>();
      if (housing != null) {
        facts.add("housing " + housing.id());
        if (housing.side() != null) {
          facts.add(housing.side().word() + " side");
        }
        if (housing.keying() != null) {
          facts.add("keying " + housing.keying());
        }
      } else if (connector != null && connector.housing() != null) {
        facts.add("housing " + connector.housing() + ", which is not known");
      }
      wiring.mating().mateOf(id).map(Mate::text).ifPresent(mate -> facts.add("mates " + mate));
      if (connector != null) {
        if (connector.parked() != null) {
          facts.add("parked, " + connector.parked().word());
        }
        if (connector.at() != null) {
          facts.add("at " + connector.at());
        }
        if (!connector.labelText().equals(id)) {
          facts.add(
              connector.labelText().isEmpty() ? "no label" : "label " + connector.labelText());
        }
      }
      return List.copyOf(facts);
    }
  }
}
