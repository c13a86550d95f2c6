package org.tugtest.report.sheets.list;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.model.Covering;
import org.tugtest.model.Layout;
import org.tugtest.report.sheets.Cell;
import org.tugtest.route.Bundle;
import org.tugtest.route.CoverLayers;

/** The rows of what goes over the segments of a loom, layer by layer. */
final class SegmentCoverings {
  private final Facts facts;
  private final Map<String, Covering> parts;
  private final List<Layout.Segment> its;

  SegmentCoverings(Facts facts, List<Layout.Segment> its) {
    this.facts = facts;
    this.parts = facts.harness().parts().coverings();
    this.its = its;
  }

  List<List<Cell>> segments() {
    List<List<Cell>> rows = new ArrayList<>();
    for (Layout.Segment segment : its) {
      Bundle thickest = facts.bundles().thickest(segment.id()).orElse(null);
      Bundle thinnest = facts.bundles().thinnest(segment.id()).orElse(null);
      CoverLayers over = layers(segment, thickest);
      CoverLayers least = layers(segment, thinnest);
      for (int i = 0; i < segment.coverings().size(); i++) {
        rows.add(layer(segment, i, over, least, thickest));
      }
      if (segment.coverings().isEmpty() && thickest != null) {
        rows.add(bare(segment, thickest));
      }
    }
    return rows;
  }

  private CoverLayers layers(Layout.Segment segment, @Nullable Bundle bundle) {
    return CoverLayers.of(
        parts,
        segment.coverings(),
        bundle == null ? 0 : bundle.expectedMm(),
        bundle == null ? 0 : bundle.looseMm());
  }

  private List<Cell> layer(
      Layout.Segment segment,
      int index,
      CoverLayers over,
      CoverLayers least,
      @Nullable Bundle bundle) {
    CoverLayers.Layer layer = over.layers().get(index);
    Covering part = layer.part();
    Double mm = segment.lengthMm();
    boolean shrinks = part != null && part.kind() == Covering.Kind.HEAT_SHRINK;
    return List.of(
        Cell.text(segment.id()),
        Cell.text(segment.from()),
        Cell.text(segment.to()),
        Cell.count(index + 1),
        Cell.text(layer.id()).over(part == null ? "no such part" : ""),
        CoveringCells.kind(part),
        Cell.number(mm, 0, "the segment gives no length"),
        mm == null
            ? Cell.EMPTY
            : Cell.number(Math.ceil(mm * (shrinks ? 1 + CoveringList.SHRINKS : 1) - 1e-9), 0),
        CoveringCells.inside(part),
        bundle == null
            ? Cell.unknown("no wire runs there")
            : sized(Cell.number(layer.insideLooseMm(), 1), bundle),
        bundle == null ? Cell.EMPTY : fits(layer, least.layers().get(index)),
        index == 0 ? supports(segment) : Cell.EMPTY);
  }

  private List<Cell> bare(Layout.Segment segment, Bundle bundle) {
    return List.of(
        Cell.text(segment.id()),
        Cell.text(segment.from()),
        Cell.text(segment.to()),
        Cell.EMPTY,
        Cell.text("none"),
        Cell.EMPTY,
        Cell.number(segment.lengthMm(), 0, "the segment gives no length"),
        Cell.EMPTY,
        Cell.EMPTY,
        sized(Cell.number(bundle.looseMm(), 1), bundle),
        Cell.EMPTY,
        supports(segment));
  }

  private static Cell sized(Cell cell, Bundle bundle) {
    int unsized = bundle.unsized().size();
    return unsized == 0 ? cell : cell.over("without " + unsized + " of unknown size");
  }

  private static Cell fits(CoverLayers.Layer most, CoverLayers.Layer least) {
    Double greatest = most.mostMm();
    Double closes = most.leastMm();
    if (greatest == null || closes == null) {
      return Cell.unknown("no inside given");
    }
    if (most.insideLooseMm() > greatest) {
      return Cell.text("too narrow");
    }
    boolean grips = most.part() != null && most.part().innerMinMm() != null;
    return Cell.text(grips && least.insideMm() < closes ? "does not close on it" : "fits");
  }

  private static Cell supports(Layout.Segment segment) {
    Integer count = segment.supports();
    if (count == null || count == 0) {
      return Cell.EMPTY;
    }
    String part = segment.supportPart();
    return Cell.text(count + " × " + (part == null ? "support" : part));
  }
}
