package org.tugtest.report.html.totals;

import java.util.ArrayList;
import java.util.List;
import org.tugtest.model.Harness;
import org.tugtest.report.html.text.Figures;
import org.tugtest.report.html.totals.PartTotals.Want;
import org.tugtest.route.Totals;

/** What is missing from the sums, and the field that gives it. */
final class Wants {
  private final Harness harness;

  Wants(Harness harness) {
    this.harness = harness;
  }

  List<Want> of(Totals.Sum sum) {
    List<Want> wants = new ArrayList<>();
    for (Totals.Line line : sum.lines()) {
      if (line.withoutLength() > 0) {
        wants.add(new Want(said(line, line.withoutLength(), "length"), length(line)));
      }
      if (line.withoutMass() > 0) {
        wants.add(new Want(said(line, line.withoutMass(), "mass"), mass(line)));
      }
    }
    return wants;
  }

  private static String said(Totals.Line line, int count, String what) {
    String of = count == line.count() ? "" : " of " + Figures.count(line.count());
    String part = line.part().isEmpty() ? ", part not given," : " " + line.part();
    return Figures.count(count)
        + of
        + " "
        + (line.count() == 1 ? one(line.kind().word()) : line.kind().word())
        + part
        + (count == 1 ? " has no " : " have no ")
        + what;
  }

  private static String one(String plural) {
    return plural.substring(0, plural.length() - 1);
  }

  private static String length(Totals.Line line) {
    return switch (line.kind()) {
      case WIRE, CABLE ->
          "a layout that both ends stand in, with lengthMm on each segment, or cutMm on the wire";
      case COVERING -> "lengthMm on the segments that wear it";
      default -> "its length";
    };
  }

  private String mass(Totals.Line line) {
    return switch (line.kind()) {
      case WIRE -> wire(line.part());
      case CABLE -> "gramsPerM of the group " + line.part();
      case HOUSING -> part(line, "housings", "grams", "a housing for the connector");
      case TERMINAL -> part(line, "terminals", "grams", "a terminal for the cavity");
      case SEAL -> part(line, "seals", "grams", "a seal for the cavity");
      case SPLICE -> part(line, "splices", "grams", "a part for the splice");
      case SUPPORT -> part(line, "supports", "grams", "supportPart on the segment");
      case COVERING ->
          harness.parts().coverings().containsKey(line.part())
                  && harness.parts().coverings().get(line.part()).gramsPerM() != null
              ? "nothing: a boot, or a piece at a node or splice, has no length to weigh it by"
              : part(line, "coverings", "gramsPerM", "coverings that the parts know");
    };
  }

  private String wire(String part) {
    if (part.isEmpty()) {
      return "part, areaMm2 or awg on the wire";
    }
    return harness.parts().wires().containsKey(part)
        ? "gramsPerM or areaMm2 in parts/wires/" + part
        : "the part " + part + " in parts/wires, with gramsPerM or areaMm2";
  }

  private static String part(Totals.Line line, String section, String field, String none) {
    return line.part().isEmpty()
        ? none + ", whose part gives " + field
        : field + " in parts/" + section + "/" + line.part();
  }
}
