package org.tugtest.report.sheets.list;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tugtest.facts.Facts;
import org.tugtest.model.Terminal;
import org.tugtest.network.WireEnd;
import org.tugtest.report.sheets.Cell;
import org.tugtest.table.Cited;
import org.tugtest.text.Quoted;

/** What the crimps of terminals measure, as far as the parts give it. */
final class CrimpHeights {
  private static final double SAME = 1e-9;
  private static final int DECIMALS = 3;

  private final Facts facts;
  private final EndCells ends;

  CrimpHeights(Facts facts, EndCells ends) {
    this.facts = facts;
    this.ends = ends;
  }

  /** The entry of the terminal for the wires that are crimped together. */
  Optional<Terminal.Crimp> of(List<WireEnd> crimp) {
    Terminal part = ends.terminalPart(crimp.get(0));
    Optional<Double> area = area(crimp);
    return part == null || area.isEmpty()
        ? Optional.empty()
        : part.crimps().stream()
            .filter(one -> one.areaMinMm2() <= area.get() + SAME)
            .filter(one -> area.get() <= one.areaMaxMm2() + SAME)
            .findFirst();
  }

  private Optional<Double> area(List<WireEnd> crimp) {
    return facts.fitting().areaSum(crimp).map(Cited::value);
  }

  /** The height over the conductor, over how far it may be off and what else is given. */
  Cell cell(List<WireEnd> crimp) {
    Optional<Terminal.Crimp> found = of(crimp);
    if (found.isEmpty()) {
      return Cell.unknown(why(crimp));
    }
    Terminal.Crimp its = found.get();
    List<String> small = new ArrayList<>();
    if (its.toleranceMm() != null) {
      small.add("± " + Quoted.number(its.toleranceMm()));
    }
    if (its.widthMm() != null) {
      small.add("width " + Quoted.number(its.widthMm()));
    }
    if (its.insulationHeightMm() != null) {
      small.add("over insulation " + Quoted.number(its.insulationHeightMm()));
    }
    return Cell.number(its.heightMm(), DECIMALS).over(String.join(", ", small));
  }

  private String why(List<WireEnd> crimp) {
    Terminal part = ends.terminalPart(crimp.get(0));
    if (part == null) {
      return "no terminal known";
    }
    if (part.crimps().isEmpty()) {
      return "the terminal gives none";
    }
    return area(crimp)
        .map(area -> "none given for " + Cell.number(area, DECIMALS).value() + " mm²")
        .orElse("no size given");
  }

  /** A figure in mm, if it is given. */
  static Cell figure(Optional<Double> mm) {
    return mm.map(given -> Cell.number(given, DECIMALS)).orElse(Cell.EMPTY);
  }
}
